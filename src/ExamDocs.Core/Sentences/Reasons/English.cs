using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Reasons;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class English(BasicWords words) : ReasonSentences
{
    public override string Observed(string? criterion, string? note, string? question) =>
        (note ?? question) is { } told ? $"{words.Criterion(criterion)}: {told}" : words.Criterion(criterion);

    public override string Defective(string observed) => $"defect: {observed}";

    public override string InDoubt(string observed) => $"in doubt: {observed}";

    public override string DefectWithoutLaterDate(string observed) => $"defect with no later date and remedy: {observed}";

    public override string DefectNotDescribed => "defect not described";

    public override string ImminentRisk(string what) => $"existing or imminent risk of serious personal injury: {what}";

    public override string DangerNow(string what) => $"a danger now: {what}";

    public override string DangerWithoutTime(string what) => $"could become a danger, and the time by which is not recorded: {what}";

    public override string DangerNotAfterExamination(LocalDate by, string what) =>
        $"could become a danger by {words.Day(by)}, which is not after the day examined: {what}";

    public override string DiameterOutside(decimal meanMm, decimal? positionMm, DiameterBand band, MakersLimits limits) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"mean diameter {meanMm} mm at {(positionMm is { } at ? $"{words.Number(at)} mm" : "a station without a position")} is "
                + $"outside {words.Number(band.NominalMm)} mm ± {words.Number(band.TolerancePercent)} % ({words.Number(band.Least)} to "
                + $"{words.Number(band.Most)} mm; {words.Document(limits)})"
        );

    public override string WithdrawalIsOpen(LocalDate on, string? document, string why, bool released) =>
        $"withdrawn on {words.Day(on)}{(document is null ? "" : $" by {document}")} ({why}), "
        + $"{(released ? "which no release can end" : "and not released since")}";

    public override string ExaminerWithdraws => "the examiner's conclusion is to withdraw it from service";

    public override string PartWithdrawn(string part) => $"the part {part} fitted to it is withdrawn, and no renewal records its removal";

    public override string PartNotPermitted(string? partNumber, string whole, string permitted, MakersLimits limits) =>
        $"{(partNumber is null ? "a part without a part number" : $"part number {partNumber}")} is not among the parts "
        + $"permitted on {whole}: {permitted} ({words.Document(limits)})";

    public override string ServiceEnded(LocalDate on, string limit) => $"end of service was {words.Day(on)}: {limit}";

    public override string NoTimeLimit =>
        "no time limit of the maker's is recorded, nor that there is none, nor that the instructions cannot be had";

    public override string AnswerNotAllowed(string? typed, string? criterion) =>
        $"'{typed ?? "nothing"}' is not an answer that {words.Criterion(criterion)} allows";

    public override string PartUndetermined(string part) => $"the part {part} fitted to it is undetermined";

    public override string PartOverdue(string part, LocalDate by) =>
        $"the part {part} fitted to it has been due for examination since {words.Day(by)}";

    public override string Destroyed(LocalDate? on, string? document) =>
        on is { } day ? $"recorded as destroyed on {words.Day(day)}{(document is null ? "" : $" ({document})")}" : "recorded as destroyed";

    public override string NotExamined => "not examined at this visit";

    public override string RecordError(Finding finding) => $"{finding.Code}: {finding.Message}";

    public override string NoAnswer(string criterion, string question) => $"no answer to {words.Criterion(criterion)} ({question})";

    public override string CriterionNotExamined(string criterion, string question) =>
        $"not examined: {words.Criterion(criterion)} ({question})";

    public override string NotAfterDanger(LocalDate last, LocalDate danger, string what) =>
        $"not to be used after {words.Day(last)}: could become a danger by {words.Day(danger)}: {what}";

    public override string NotAfterPart(LocalDate last, string part) =>
        $"not to be used after {words.Day(last)}, the last day of the part {part} fitted to it";

    public override string NotAfterService(LocalDate last, string limit) => $"not to be used after {words.Day(last)}: {limit}";
}
