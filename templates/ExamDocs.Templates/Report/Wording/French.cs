using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.Report.Wording;

/// <inheritdoc />
internal sealed partial class French : ReportPhrases
{
    public override string MadeFor => "Établi pour (employeur)";
    public override string Premises => "Lieu de la vérification";
    public override string HiredFrom => "Propriétaire (loueur, crédit-bailleur)";
    public override string ReportDate => "Date du rapport";
    public override string ResultHeading => "Résultat";
    public override string DoNotUseHeading => "Ne pas utiliser";
    public override string UntilHeading => "Seulement jusqu’à une date";
    public override string ReportItemHeading => "Indications sur l’équipement";
    public override string ColumnNumber => "N°";
    public override string ColumnOutcome => "Résultat";
    public override string ColumnNext => "Prochaine au plus tard";
    public override string NotReportedHeading => "Enregistré à cette visite, mais absent de ce rapport";

    public override string NotReported =>
        "Ces équipements ne font pas l’objet du rapport, car ils n’ont pas été vérifiés, ou leur enregistrement est "
        + "incomplet, contradictoire ou impossible à imprimer en entier. Ils ne sont pas à considérer comme aptes à l’emploi.";

    public override string Basis => "Vérifié";
    public override string SafeToOperate => "Utilisation sûre";
    public override string DefectsHeading => "Défauts";
    public override string NoDefects => "aucun inscrit qui soit ou puisse devenir un danger";

    public override string NoDefectWritten =>
        "aucun défaut de l’équipement lui-même n’est décrit\u00A0; les motifs ci-dessus disent pourquoi il ne faut pas l’utiliser";

    public override string Tests => "Essais faits";
    public override string NoTests => "aucun essai inscrit";
    public override string DiametersHeading => "diamètre le long de la corde";
    public override string AuthorAndSignerHeading => "Rapport établi et authentifié par";
    public override string AuthorHeading => "Rapport établi par";
    public override string AuthenticatedHeading => "Authentifié par";
    public override string Name => "Nom";
    public override string Address => "Adresse";
    public override string Qualifications => "Qualifications";
    public override string SelfEmployed => "Indépendant";
    public override string EmployedBy => "Employé par";
    public override string EmploymentNotRecorded => "indépendant ou employé\u00A0: non renseigné";
    public override string SignLead => "Authentifié par signature\u00A0:";
    public override string LegendHeading => "Comment lire ce rapport";

    public override string Last(string examination) => $"Dernière {examination}";

    public override string MoreReasons(int more) =>
        more == 1 ? "\u00A0; et 1 autre motif" : $"\u00A0; et {Printed.Count(more)} autres motifs";

    public override string ShortOutcome(Outcome outcome) =>
        outcome switch
        {
            Core.Records.Outcome.Withdraw => "Ne pas utiliser",
            Core.Records.Outcome.FitUntil => "Jusqu’à une date",
            Core.Records.Outcome.Undetermined => "Ne pas utiliser",
            _ => "En service",
        };

    public override string PositionOf(int position, int of) => $"Équipement {Printed.Count(position)} sur {Printed.Count(of)}";

    public override string SafeFit => "oui, dans l’état vérifié";

    public override string SafeUntil(LocalDate? until) => $"oui, dans l’état vérifié, jusqu’au {Printed.Day(until)} inclus";

    public override string SafeInstalled => "oui\u00A0: installé correctement et d’utilisation sûre dans l’état vérifié";

    public override string Scheme(string? reference, string? author, int? months) =>
        $"plan de vérification {Printed.Text(reference)}, établi par {Printed.Text(author)}, intervalle en mois\u00A0: "
        + $"{(months is { } m ? Printed.Count(m) : CommonPhrases.Languages.French.NotRecorded)}";

    public override string Event(string? what, LocalDate? on) => $"{Printed.Text(what)}, le {Printed.Day(on)}";
}
