using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences.Basics;
using NodaTime;

namespace ExamDocs.Core.Sentences.Evidence;

/// <inheritdoc />
/// <param name="words">Of the same language.</param>
internal sealed class French(BasicWords words) : EvidenceSentences
{
    public override string Marks(Item item) =>
        Say.Join(
            ", ",
            Mark("fabricant", item.Maker),
            Mark("modèle", item.Model),
            Mark("référence", item.PartNumber),
            Mark("numéro de série", item.Serial),
            Mark("marque du propriétaire", item.OwnersMark),
            item.Serial is null && item.OwnersMark is null ? "ni numéro de série ni marque du propriétaire pour le reconnaître" : null
        );

    public override string Made(PartialDate on) => $"fabriqué {words.When(on)}";

    public override string ManufactureNotRecorded => "date de fabrication non renseignée";

    public override string Declaration(string reference, LocalDate? on) =>
        $"déclaration de conformité {reference}{(on is { } day ? $" du {words.Day(day)}" : "")}";

    public override string FittedWithoutList(string whole) =>
        $"monté sur {whole}, pour lequel aucune liste de pièces admises n’est enregistrée";

    public override string PartPermitted(string? partNumber, string whole) =>
        $"la référence {partNumber} est parmi les pièces admises sur {whole}";

    public override string NeverUsed => "jamais utilisé";

    public override string FirstUsed(PartialDate on) => $"première utilisation {words.When(on)}";

    public override string FirstUseNotRecorded => "première utilisation non renseignée";

    public override string Exposed(Exposure exposure) =>
        Say.Join(
            ", ",
            Mark("usage\u00A0:", exposure.Use),
            Mark("pièce métallique\u00A0:", exposure.Hardware),
            Mark("terrain\u00A0:", exposure.Ground),
            exposure.UserMassKg is { } mass ? $"utilisateur de {words.Number(mass)}\u00A0kg" : null
        );

    public override string LastExamined(PartialDate on) => $"dernière vérification {words.When(on)}";

    public override string NoEarlierExamination => "aucune vérification antérieure connue";

    public override string ExaminedEarlier(LocalDate on, Conclusion? conclusion) =>
        $"vérifié le {words.Day(on)}, conclusion\u00A0: {Judgement(conclusion)}";

    public override string EventHappened(LocalDate on, string what) => $"événement exceptionnel le {words.Day(on)}\u00A0: {what}";

    public override string Remedied(Remedy remedy) =>
        $"{remedy.What ?? "une correction non décrite"}"
        + $"{(remedy.DoneOn is { } on ? $" le {words.Day(on)}" : "")}"
        + $"{(remedy.Evidence is { } evidence ? $" ({evidence})" : "")}";

    public override string Renewed(Renewal renewal)
    {
        var on = renewal.DoneOn is { } day ? $" le {words.Day(day)}" : "";
        return (renewal.RemovedPart, renewal.FittedPart) switch
        {
            ({ } off, { } fitted) => $"{off} retiré de {renewal.Item} et {fitted} monté{on}",
            ({ } off, _) => $"{off} retiré de {renewal.Item}{on}",
            var (_, fitted) => $"{fitted} monté sur {renewal.Item}{on}",
        };
    }

    public override string NoAnswerYet(string criterion) => $"{words.Criterion(criterion)}\u00A0: aucune réponse";

    public override string Answered(Observation observation)
    {
        var answer = observation.State is { } state ? words.State(state) : observation.StateAsTyped ?? "aucune réponse";
        return $"{words.Criterion(observation.Criterion)}\u00A0: "
            + $"{answer}{(observation.Note is { } note ? $", {note}" : "")}{(observation.Photo is { } photo ? $" (photo {photo})" : "")}";
    }

    public override string Tested(TestMade test) =>
        $"essai\u00A0: {test.Description ?? "non décrit"}\u00A0: {test.Result ?? "résultat non renseigné"}";

    public override string NextExaminationBy(LocalDate day) => $"prochaine vérification au plus tard le {words.Day(day)}";

    public override string EndedWithRenewal(LocalDate on, string why) =>
        $"retiré du service le {words.Day(on)} ({why})\u00A0; terminé par le renouvellement de ce sur quoi cela reposait";

    public override string EndedWithRelease(LocalDate on, string why, LocalDate released, string? by, string? grounds, bool inError) =>
        $"retiré du service le {words.Day(on)} ({why})\u00A0; remis en service le {words.Day(released)} par "
        + $"{by}{(inError ? ", car enregistré par erreur" : "")}\u00A0: {grounds}";

    public override string EarlierDefect(string? description, string? criterion, LocalDate? found, LocalDate? danger) =>
        $"{description ?? (criterion is null ? "un défaut non décrit" : words.Criterion(criterion))}"
        + $"{(found is { } on ? $", trouvé le {words.Day(on)}" : "")}, pourrait devenir un danger"
        + $"{(danger is { } day ? $" d’ici au {words.Day(day)}" : "")}";

    public override string RecordedAgain(string defect) => $"{defect}\u00A0; enregistré de nouveau à cette vérification";

    public override string ResolvedBy(string defect, string remedy) => $"{defect}\u00A0; résolu par\u00A0: {remedy}";

    public override string NotFoundAgain(string defect) => $"{defect}\u00A0; non retrouvé, et aucune correction n’est enregistrée";

    public override string ExaminerConcludes(Conclusion? conclusion) =>
        conclusion is null
            ? "la conclusion du vérificateur n’est pas renseignée"
            : $"le vérificateur conclut\u00A0: {Judgement(conclusion)}";

    private static string Judgement(Conclusion? conclusion) =>
        conclusion switch
        {
            Conclusion.Fit => "apte à l’emploi",
            Conclusion.Withdraw => "à retirer du service",
            _ => "non renseignée",
        };

    private static string? Mark(string what, string? value) => value is null ? null : $"{what} {value}";
}
