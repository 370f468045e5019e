using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words to choose from.</content>
internal sealed partial class French
{
    public override string StateWord(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Rien à signaler",
            ObservedState.Noted => "Noté",
            ObservedState.Doubt => "Doute",
            ObservedState.Defect => "Défaut",
            ObservedState.NoSign => "Personne à interroger\u00A0; aucun signe trouvé",
            ObservedState.NotExamined => "Non examiné",
            _ => "Sans objet",
        };

    public override string BasisWord(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "semestriel",
            Core.Records.Basis.TwelveMonth => "annuel",
            Core.Records.Basis.Scheme => "plan d’examen",
            Core.Records.Basis.Exceptional => "événement exceptionnel",
            Core.Records.Basis.FirstUse => "avant la mise en service",
            _ => "après installation",
        };

    public override string PurposeWord(Purpose purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "élève des personnes",
            Core.Records.Purpose.Accessory => "accessoire de levage",
            Core.Records.Purpose.Other => "autre levage",
            _ => "arrêt des chutes seulement",
        };

    public override string StatusWord(ItemStatus status) =>
        status switch
        {
            ItemStatus.InUse => "en service",
            ItemStatus.Stored => "stocké",
            ItemStatus.NotPresented => "non présenté",
            ItemStatus.Lost => "perdu",
            _ => "détruit",
        };

    public override string MeansWord(Means means) =>
        means switch
        {
            Means.Look => "regarder",
            Means.Feel => "toucher",
            Means.Measure => "mesurer",
            Means.Operate => "manœuvrer",
            Means.Ask => "demander",
            _ => "lire",
        };
}
