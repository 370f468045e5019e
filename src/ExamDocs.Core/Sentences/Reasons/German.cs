using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Reasons;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class German(BasicWords words) : ReasonSentences
{
    public override string Observed(string? criterion, string? note, string? question) =>
        (note ?? (question is null ? null : Terms.German.Question(question))) is { } told
            ? $"{words.Criterion(criterion)}: {told}"
            : words.Criterion(criterion);

    public override string Defective(string observed) => $"Mangel: {observed}";

    public override string InDoubt(string observed) => $"Zweifel: {observed}";

    public override string DefectWithoutLaterDate(string observed) => $"Mangel ohne späteren Zeitpunkt und Behebung: {observed}";

    public override string DefectNotDescribed => "Mangel nicht beschrieben";

    public override string ImminentRisk(string what) => $"bestehende oder unmittelbar drohende Gefahr schwerer Verletzung: {what}";

    public override string DangerNow(string what) => $"jetzt eine Gefahr: {what}";

    public override string DangerWithoutTime(string what) => $"könnte eine Gefahr werden; bis wann, ist nicht erfasst: {what}";

    public override string DangerNotAfterExamination(LocalDate by, string what) =>
        $"könnte bis {words.Day(by)} eine Gefahr werden, und das ist nicht nach dem Tag der Prüfung: {what}";

    public override string DiameterOutside(decimal meanMm, decimal? positionMm, DiameterBand band, MakersLimits limits) =>
        $"mittlerer Durchmesser {Notation.German.Number(meanMm)}\u00A0mm {words.Place(positionMm)} liegt außerhalb von "
        + $"{words.Number(band.NominalMm)}\u00A0mm ± {words.Number(band.TolerancePercent)}\u00A0% "
        + $"({words.Number(band.Least)} bis {words.Number(band.Most)}\u00A0mm; {words.Document(limits)})";

    public override string WithdrawalIsOpen(LocalDate on, string? document, string why, bool released) =>
        $"am {words.Day(on)}{(document is null ? "" : $" mit {document}")} ausgesondert ({why}), "
        + $"{(released ? "was keine Freigabe beenden kann" : "seither nicht freigegeben")}";

    public override string ExaminerWithdraws => "Beurteilung des Prüfers: aussondern";

    public override string PartWithdrawn(string part) =>
        $"das daran angebrachte Teil {part} ist aus dem Gebrauch genommen, und keine Erneuerung zeichnet seine Abnahme auf";

    public override string PartNotPermitted(string? partNumber, string whole, string permitted, MakersLimits limits) =>
        $"{(partNumber is null ? "ein Teil ohne Artikelnummer" : $"Artikelnummer {partNumber}")} gehört nicht zu den an "
        + $"{whole} zugelassenen Teilen: {permitted} ({words.Document(limits)})";

    public override string ServiceEnded(LocalDate on, string limit) => $"das Ende der Gebrauchsdauer war am {words.Day(on)}: {limit}";

    public override string NoTimeLimit =>
        "es ist weder eine Zeitgrenze des Herstellers aufgezeichnet noch, dass es keine gibt, noch, dass die Anleitung "
        + "nicht zu erlangen ist";

    public override string AnswerNotAllowed(string? typed, string? criterion) =>
        $"„{typed ?? "nichts"}“ ist keine Antwort, die das Kriterium zulässt: {words.Criterion(criterion)}";

    public override string PartUndetermined(string part) => $"das daran angebrachte Teil {part} ist ungeklärt";

    public override string PartOverdue(string part, LocalDate by) => $"das daran angebrachte Teil {part} war bis {words.Day(by)} zu prüfen";

    public override string Destroyed(LocalDate? on, string? document) =>
        on is { } day
            ? $"am {words.Day(day)} als vernichtet erfasst{(document is null ? "" : $" ({document})")}"
            : "als vernichtet erfasst";

    public override string NotExamined => "bei diesem Prüfauftrag nicht geprüft";

    public override string RecordError(Finding finding) => $"{finding.Code}: {words.Said(finding.Message)}";

    public override string NoAnswer(string criterion, string question) =>
        $"keine Antwort: {words.Criterion(criterion)} ({Terms.German.Question(question)})";

    public override string CriterionNotExamined(string criterion, string question) =>
        $"nicht geprüft: {words.Criterion(criterion)} ({Terms.German.Question(question)})";

    public override string NotAfterDanger(LocalDate last, LocalDate danger, string what) =>
        $"nach dem {words.Day(last)} nicht mehr benutzen: könnte bis {words.Day(danger)} eine Gefahr werden: {what}";

    public override string NotAfterPart(LocalDate last, string part) =>
        $"nach dem {words.Day(last)} nicht mehr benutzen, dem letzten Gebrauchstag des daran angebrachten Teils {part}";

    public override string NotAfterService(LocalDate last, string limit) => $"nach dem {words.Day(last)} nicht mehr benutzen: {limit}";
}
