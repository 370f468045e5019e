using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Evidence;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class German(BasicWords words) : EvidenceSentences
{
    public override string Marks(Item item) =>
        Say.Join(
            ", ",
            Mark("Hersteller", item.Maker),
            Mark("Modell", item.Model),
            Mark("Artikelnummer", item.PartNumber),
            Mark("Seriennummer", item.Serial),
            Mark("Eigentümerzeichen", item.OwnersMark),
            item.Serial is null && item.OwnersMark is null
                ? "weder Seriennummer noch Eigentümerzeichen, an denen er zu erkennen wäre"
                : null
        );

    public override string Made(PartialDate on) => $"hergestellt {words.When(on)}";

    public override string ManufactureNotRecorded => "Herstellungsdatum nicht erfasst";

    public override string Declaration(string reference, LocalDate? on) =>
        $"Konformitätserklärung {reference}{(on is { } day ? $" vom {words.Day(day)}" : "")}";

    public override string FittedWithoutList(string whole) =>
        $"angebracht an {whole}, wofür keine Liste zugelassener Teile aufgezeichnet ist";

    public override string PartPermitted(string? partNumber, string whole) =>
        $"Artikelnummer {partNumber} gehört zu den an {whole} zugelassenen Teilen";

    public override string NeverUsed => "nie benutzt";

    public override string FirstUsed(PartialDate on) => $"erster Gebrauch {words.When(on)}";

    public override string FirstUseNotRecorded => "erster Gebrauch nicht erfasst";

    public override string Exposed(Exposure exposure) =>
        Say.Join(
            ", ",
            Mark("Gebrauch:", exposure.Use),
            Mark("Metallteil:", exposure.Hardware),
            Mark("Gelände:", exposure.Ground),
            exposure.UserMassKg is { } mass ? $"Benutzermasse {words.Number(mass)}\u00A0kg" : null
        );

    public override string LastExamined(PartialDate on) => $"zuletzt geprüft {words.When(on)}";

    public override string NoEarlierExamination => "keine frühere Prüfung bekannt";

    public override string ExaminedEarlier(LocalDate on, Conclusion? conclusion) =>
        $"geprüft am {words.Day(on)}, Beurteilung: {Judgement(conclusion)}";

    public override string EventHappened(LocalDate on, string what) => $"außergewöhnliches Ereignis am {words.Day(on)}: {what}";

    public override string Remedied(Remedy remedy) =>
        $"{remedy.What ?? "eine nicht beschriebene Behebung"}"
        + $"{(remedy.DoneOn is { } on ? $" am {words.Day(on)}" : "")}"
        + $"{(remedy.Evidence is { } evidence ? $" ({evidence})" : "")}";

    public override string Renewed(Renewal renewal)
    {
        var on = renewal.DoneOn is { } day ? $" am {words.Day(day)}" : "";
        return (renewal.RemovedPart, renewal.FittedPart) switch
        {
            ({ } off, { } fitted) => $"{off} von {renewal.Item} abgenommen und {fitted} angebracht{on}",
            ({ } off, _) => $"{off} von {renewal.Item} abgenommen{on}",
            var (_, fitted) => $"{fitted} an {renewal.Item} angebracht{on}",
        };
    }

    public override string NoAnswerYet(string criterion) => $"{words.Criterion(criterion)}: keine Antwort";

    public override string Answered(Observation observation)
    {
        var answer = observation.State is { } state ? words.State(state) : observation.StateAsTyped ?? "keine Antwort";
        return $"{words.Criterion(observation.Criterion)}: "
            + $"{answer}{(observation.Note is { } note ? $", {note}" : "")}{(observation.Photo is { } photo ? $" (Foto {photo})" : "")}";
    }

    public override string Tested(TestMade test) =>
        $"Erprobung: {test.Description ?? "nicht beschrieben"}: {test.Result ?? "Ergebnis nicht erfasst"}";

    public override string NextExaminationBy(LocalDate day) => $"nächste Prüfung bis {words.Day(day)}";

    public override string EndedWithRenewal(LocalDate on, string why) =>
        $"am {words.Day(on)} aus dem Gebrauch genommen ({why}); beendet mit der Erneuerung dessen, worauf es beruhte";

    public override string EndedWithRelease(LocalDate on, string why, LocalDate released, string? by, string? grounds, bool inError) =>
        $"am {words.Day(on)} aus dem Gebrauch genommen ({why}); am {words.Day(released)} von {by} "
        + $"freigegeben{(inError ? ", weil irrtümlich erfasst" : "")}: {grounds}";

    public override string EarlierDefect(string? description, string? criterion, LocalDate? found, LocalDate? danger) =>
        $"{description ?? (criterion is null ? "ein nicht beschriebener Mangel" : words.Criterion(criterion))}"
        + $"{(found is { } on ? $", gefunden am {words.Day(on)}" : "")}, könnte eine Gefahr werden"
        + $"{(danger is { } day ? $" bis {words.Day(day)}" : "")}";

    public override string RecordedAgain(string defect) => $"{defect}; bei dieser Prüfung wieder aufgezeichnet";

    public override string ResolvedBy(string defect, string remedy) => $"{defect}; behoben durch: {remedy}";

    public override string NotFoundAgain(string defect) => $"{defect}; nicht wieder gefunden, und keine Behebung ist aufgezeichnet";

    public override string ExaminerConcludes(Conclusion? conclusion) =>
        conclusion is null ? "die Beurteilung des Prüfers ist nicht erfasst" : $"Beurteilung des Prüfers: {Judgement(conclusion)}";

    private static string Judgement(Conclusion? conclusion) =>
        conclusion switch
        {
            Conclusion.Fit => "gebrauchstauglich",
            Conclusion.Withdraw => "aussondern",
            _ => "nicht erfasst",
        };

    private static string? Mark(string what, string? value) => value is null ? null : $"{what} {value}";
}
