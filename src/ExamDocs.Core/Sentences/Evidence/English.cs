using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Evidence;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class English(BasicWords words) : EvidenceSentences
{
    public override string Marks(Item item)
    {
        var marks = new[]
        {
            Mark("maker", item.Maker),
            Mark("model", item.Model),
            Mark("part number", item.PartNumber),
            Mark("serial", item.Serial),
            Mark("owner's mark", item.OwnersMark),
            item.Serial is null && item.OwnersMark is null ? "neither a serial nor an owner's mark to tell it by" : null,
        };
        return string.Join(", ", marks.OfType<string>());
    }

    public override string Made(PartialDate on) => $"made {words.When(on)}";

    public override string ManufactureNotRecorded => "date of manufacture not recorded";

    public override string Declaration(string reference, LocalDate? on) =>
        $"declaration of conformity {reference}{(on is { } day ? $" of {words.Day(day)}" : "")}";

    public override string FittedWithoutList(string whole) => $"fitted to {whole}, for which no list of permitted parts is recorded";

    public override string PartPermitted(string? partNumber, string whole) =>
        $"part number {partNumber} is among the parts permitted on {whole}";

    public override string NeverUsed => "never used";

    public override string FirstUsed(PartialDate on) => $"first used {words.When(on)}";

    public override string FirstUseNotRecorded => "first use not recorded";

    public override string Exposed(Exposure exposure) =>
        string.Join(
            ", ",
            new[]
            {
                exposure.Use is { } use ? $"use {use}" : null,
                exposure.Hardware is { } hardware ? $"on a {hardware}" : null,
                exposure.Ground is { } ground ? $"ground {ground}" : null,
                exposure.UserMassKg is { } mass ? $"user of {words.Number(mass)} kg" : null,
            }.OfType<string>()
        );

    public override string LastExamined(PartialDate on) => $"last examined {words.When(on)}";

    public override string NoEarlierExamination => "no earlier examination is known";

    public override string ExaminedEarlier(LocalDate on, Conclusion? conclusion) =>
        $"examined on {words.Day(on)}, conclusion {(conclusion is { } word ? Words.Conclusions.WordFor(word) : "not recorded")}";

    public override string EventHappened(LocalDate on, string what) => $"exceptional event on {words.Day(on)}: {what}";

    public override string Remedied(Remedy remedy) =>
        $"{remedy.What ?? "a remedy not described"}"
        + $"{(remedy.DoneOn is { } on ? $" on {words.Day(on)}" : "")}"
        + $"{(remedy.Evidence is { } evidence ? $" ({evidence})" : "")}";

    public override string Renewed(Renewal renewal)
    {
        var on = renewal.DoneOn is { } day ? $" on {words.Day(day)}" : "";
        return (renewal.RemovedPart, renewal.FittedPart) switch
        {
            ({ } off, { } fitted) => $"{off} taken off {renewal.Item} and {fitted} fitted{on}",
            ({ } off, _) => $"{off} taken off {renewal.Item}{on}",
            var (_, fitted) => $"{fitted} fitted to {renewal.Item}{on}",
        };
    }

    public override string NoAnswerYet(string criterion) => $"{words.Criterion(criterion)}: no answer";

    public override string Answered(Observation observation)
    {
        var answer =
            observation.State is ObservedState.NoSign
                ? "nobody to ask; no sign found"
                : observation.StateAsTyped?.Replace('-', ' ') ?? "no answer";
        return $"{words.Criterion(observation.Criterion)}: "
            + $"{answer}{(observation.Note is { } note ? $", {note}" : "")}{(observation.Photo is { } photo ? $" (photo {photo})" : "")}";
    }

    public override string Tested(TestMade test) => $"test: {test.Description ?? "not described"}: {test.Result ?? "result not recorded"}";

    public override string NextExaminationBy(LocalDate day) => $"next examination by {words.Day(day)}";

    public override string EndedWithRenewal(LocalDate on, string why) =>
        $"withdrawn on {words.Day(on)} ({why}); ended with the renewal of what it rested on";

    public override string EndedWithRelease(LocalDate on, string why, LocalDate released, string? by, string? grounds, bool inError) =>
        $"withdrawn on {words.Day(on)} ({why}); released on {words.Day(released)} by "
        + $"{by}{(inError ? ", because it was recorded in error" : "")}: {grounds}";

    public override string EarlierDefect(string? description, string? criterion, LocalDate? found, LocalDate? danger) =>
        $"{description ?? (criterion is null ? "a defect not described" : words.Criterion(criterion))}"
        + $"{(found is { } on ? $", found on {words.Day(on)}" : "")}, could become a danger"
        + $"{(danger is { } day ? $" by {words.Day(day)}" : "")}";

    public override string RecordedAgain(string defect) => $"{defect}; recorded again at this examination";

    public override string ResolvedBy(string defect, string remedy) => $"{defect}; resolved by: {remedy}";

    public override string NotFoundAgain(string defect) => $"{defect}; not found again, and no remedy is recorded";

    public override string ExaminerConcludes(Conclusion? conclusion) =>
        conclusion switch
        {
            Conclusion.Fit => "the examiner concludes: fit",
            Conclusion.Withdraw => "the examiner concludes: withdraw",
            _ => "the examiner's conclusion is not recorded",
        };

    private static string? Mark(string what, string? value) => value is null ? null : $"{what} {value}";
}
