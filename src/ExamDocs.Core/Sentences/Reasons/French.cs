using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Reasons;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class French(BasicWords words) : ReasonSentences
{
    public override string Observed(string? criterion, string? note, string? question) =>
        (note ?? (question is null ? null : Terms.French.Question(question))) is { } told
            ? $"{words.Criterion(criterion)}\u00A0: {told}"
            : words.Criterion(criterion);

    public override string Defective(string observed) => $"défaut\u00A0: {observed}";

    public override string InDoubt(string observed) => $"doute\u00A0: {observed}";

    public override string DefectWithoutLaterDate(string observed) => $"défaut sans date ultérieure ni correction\u00A0: {observed}";

    public override string DefectNotDescribed => "défaut non décrit";

    public override string ImminentRisk(string what) => $"risque existant ou imminent de blessure grave\u00A0: {what}";

    public override string DangerNow(string what) => $"un danger dès maintenant\u00A0: {what}";

    public override string DangerWithoutTime(string what) =>
        $"pourrait devenir un danger, et avant quand n’est pas renseigné\u00A0: {what}";

    public override string DangerNotAfterExamination(LocalDate by, string what) =>
        $"pourrait devenir un danger d’ici au {words.Day(by)}, ce qui n’est pas après le jour de la vérification\u00A0: {what}";

    public override string DiameterOutside(decimal meanMm, decimal? positionMm, DiameterBand band, MakersLimits limits) =>
        $"le diamètre moyen de {Notation.French.Number(meanMm)}\u00A0mm {words.Place(positionMm)} est hors de "
        + $"{words.Number(band.NominalMm)}\u00A0mm ± {words.Number(band.TolerancePercent)}\u00A0% (de {words.Number(band.Least)} à "
        + $"{words.Number(band.Most)}\u00A0mm\u00A0; {words.Document(limits)})";

    public override string WithdrawalIsOpen(LocalDate on, string? document, string why, bool released) =>
        $"retiré du service le {words.Day(on)}{(document is null ? "" : $" par {document}")} ({why}), "
        + $"{(released ? "ce qu’aucune remise en service ne peut lever" : "et non remis en service depuis")}";

    public override string ExaminerWithdraws => "le vérificateur conclut qu’il faut le retirer du service";

    public override string PartWithdrawn(string part) =>
        $"la pièce {part} montée dessus est retirée du service, et aucun renouvellement n’enregistre sa dépose";

    public override string PartNotPermitted(string? partNumber, string whole, string permitted, MakersLimits limits) =>
        $"{(partNumber is null ? "une pièce sans référence" : $"la référence {partNumber}")} n’est pas parmi les pièces "
        + $"admises sur {whole}\u00A0: {permitted} ({words.Document(limits)})";

    public override string ServiceEnded(LocalDate on, string limit) => $"la fin de service était le {words.Day(on)}\u00A0: {limit}";

    public override string NoTimeLimit =>
        "il n’est enregistré ni limite de temps du fabricant, ni qu’il n’y en a pas, ni que la notice est introuvable";

    public override string AnswerNotAllowed(string? typed, string? criterion) =>
        $"«\u00A0{typed ?? "rien"}\u00A0» n’est pas une réponse admise par le critère\u00A0: {words.Criterion(criterion)}";

    public override string PartUndetermined(string part) => $"la pièce {part} montée dessus est en attente de décision";

    public override string PartOverdue(string part, LocalDate by) =>
        $"la pièce {part} montée dessus devait être vérifiée au plus tard le {words.Day(by)}";

    public override string Destroyed(LocalDate? on, string? document) =>
        on is { } day
            ? $"enregistré comme détruit le {words.Day(day)}{(document is null ? "" : $" ({document})")}"
            : "enregistré comme détruit";

    public override string NotExamined => "non vérifié à cette visite";

    public override string RecordError(Finding finding) => $"{finding.Code}\u00A0: {words.Said(finding.Message)}";

    public override string NoAnswer(string criterion, string question) =>
        $"aucune réponse\u00A0: {words.Criterion(criterion)} ({Terms.French.Question(question)})";

    public override string CriterionNotExamined(string criterion, string question) =>
        $"non examiné\u00A0: {words.Criterion(criterion)} ({Terms.French.Question(question)})";

    public override string NotAfterDanger(LocalDate last, LocalDate danger, string what) =>
        $"ne pas utiliser après le {words.Day(last)}\u00A0: pourrait devenir un danger d’ici au {words.Day(danger)}\u00A0: {what}";

    public override string NotAfterPart(LocalDate last, string part) =>
        $"ne pas utiliser après le {words.Day(last)}, dernier jour de la pièce {part} montée dessus";

    public override string NotAfterService(LocalDate last, string limit) => $"ne pas utiliser après le {words.Day(last)}\u00A0: {limit}";
}
