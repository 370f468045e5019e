using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.LawAndSources;

/// <inheritdoc />
internal sealed class French : LawAndSourcesPhrases
{
    public override string Heading => "Textes applicables et sources";
    public override string Law => "Textes";
    public override string Interval => "Intervalle";
    public override string Keep => "Conservation";
    public override string FromMemory => "Non vérifié";
    public override string NotConfirmed => "Non confirmé";
    public override string AddedByUser => "Ajouté";
    public override string KeepNotKnown => "La durée de conservation de ce rapport ne figure pas dans les données de ce régime.";

    public override string EarlierRecords => "Enregistrements antérieurs";

    public override string Asked(string register, LocalDate? since) =>
        "Les retraits et vérifications antérieurs ont été cherchés dans le registre "
        + $"{register}{(since is { } day ? $", tenu depuis le {Printed.Day(day)}" : "")}. Ce qui n’y a jamais été "
        + "enregistré n’est pas connu.";

    public override string Added(string file) =>
        $"Ce régime ne fait pas partie du programme\u00A0: l’utilisateur l’a ajouté, depuis {file}";

    public override string UsersOwn => "régime propre à l’utilisateur";

    public override string AddedShort(string file) => $"ajouté par l’utilisateur depuis {file}";

    public override string AddedCategory(string name, string file) =>
        $"Les critères de «\u00A0{name}\u00A0» ne font pas partie du programme\u00A0: l’utilisateur les a ajoutés, depuis {file}.";

    public override string Confidence(Confidence confidence) =>
        confidence switch
        {
            Core.Regimes.Confidence.Read => "lu à la source",
            Core.Regimes.Confidence.UnofficialCopy => "lu dans une copie non officielle",
            Core.Regimes.Confidence.FromMemory => "texte non vérifié à la source",
            Core.Regimes.Confidence.Computed => "déduit de ce qui a été lu",
            Core.Regimes.Confidence.CommonPractice => "pratique courante",
            _ => throw new ArgumentOutOfRangeException(nameof(confidence)),
        };

    public override string Sourced(string text, string source, Confidence confidence) =>
        $"{text} ({source}\u00A0; {Confidence(confidence)})";

    public override string IntervalLine(int months, bool lessThan, string what, bool byBasis, string source, Confidence confidence)
    {
        var line = $"{(lessThan ? "moins de" : "au plus")} {Printed.Count(months)} mois {what}";
        return byBasis ? $"{line}, comme enregistré" : Sourced(line, source, confidence);
    }

    public override string KeepLine(KeepUntil keep, string rule, string source) =>
        Sourced(
            keep switch
            {
                { Until: { } until } => $"jusqu’au {Printed.Day(until)}\u00A0: {rule}",
                { AtLeastUntil: { } least } => $"{rule}, donc pas avant le {Printed.Day(least)}",
                _ => rule,
            },
            source,
            keep.Confidence
        );

    public override string KeepNotFound(string rule, string source, Confidence confidence) =>
        $"Durée de conservation de ce rapport\u00A0: {Sourced(rule, source, confidence)}.";

    public override string KeepThis(IReadOnlyList<string> lines) =>
        lines.Count == 1
            ? $"Conserver ce rapport\u00A0: {lines[0]}."
            : "Conserver ce rapport aussi longtemps que le demande la plus longue de ces règles\u00A0: "
                + $"{string.Join("\u00A0; ", lines)}.";

    public override string ParticularsFromMemory(IEnumerable<string> sources) =>
        $"Ce que le rapport doit contenir selon {string.Join("\u00A0; ", sources)}\u00A0: texte non vérifié à la source.";

    public override string Authority(Recipient whom, string source, Confidence confidence) =>
        LawAndSourcesPhrases.Languages.French.Sourced(
            whom switch
            {
                Recipient.Employer => "L’employeur",
                Recipient.Owner => "Le propriétaire (loueur, crédit-bailleur)",
                Recipient.HealthAndSafetyExecutive => "Health and Safety Executive (autorité britannique de la sécurité au travail)",
                Recipient.AuthorityForThePremises => "L’autorité compétente pour le lieu de la vérification",
                Recipient.EnforcingAuthority => "L’autorité compétente",
                _ => throw new ArgumentOutOfRangeException(nameof(whom)),
            },
            source,
            confidence
        );
}
