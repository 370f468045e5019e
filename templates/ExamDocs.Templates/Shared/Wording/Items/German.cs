using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Templates.Shared.Wording.Items;

/// <inheritdoc />
internal sealed class German : ItemPhrases
{
    public override string VisitDate => "Geprüft am";
    public override string ColumnItem => "Gegenstand";
    public override string ColumnDescription => "Beschreibung";
    public override string Category => "Art";
    public override string Maker => "Hersteller";
    public override string Model => "Modell";
    public override string PartNumber => "Artikel-Nr.";
    public override string Serial => "Serien- oder Chargennummer";
    public override string OwnersMark => "Eigentümerzeichen";
    public override string Manufactured => "Hergestellt";
    public override string FirstUsed => "Erster Gebrauch";
    public override string NeverUsed => "nie benutzt";
    public override string Standards => "Angegebene Normen";
    public override string FittedTo => "Angebracht an";
    public override string Parts => "Daran angebrachte Teile";
    public override string SafeWorkingLoad => "Tragfähigkeit";
    public override string MarkedStrength => "Angegebene Bruchkraft";
    public override string Purpose => "Zweck";
    public override string MakersLimits => "Zugrunde gelegte Herstelleranleitung";
    public override string EndOfService => "Ende der Gebrauchsdauer nach erfassten Grenzen";
    public override string DefectPart => "Teil und Mangel";
    public override string DefectDanger => "Gefahr";
    public override string DefectRemedy => "Nötige Instandsetzung, Erneuerung oder Änderung";
    public override string DangerNow => "ist jetzt eine Gefahr: bis zur Behebung nicht benutzen";
    public override string ImminentRisk => "bestehende oder unmittelbar drohende Gefahr schwerer Verletzung";
    public override string NoNext => "keine festgelegt: nicht benutzen";
    public override string NotAfter => "Nicht mehr benutzen nach dem";
    public override string NotAfterAnyDay => "überhaupt nicht benutzen";
    public override string NoNotAfter => "kein früheres Datum festgelegt";
    public override string ExaminedOn => "Datum der Prüfung";

    public override string PhotoCaption(int number, string criterion, ObservedState? state, string? note) =>
        Printed.Join(
            ": ",
            Printed.Join(
                ", ",
                $"Foto {Printed.Count(number)}",
                criterion,
                state is { } answer ? SentenceBook.German.Words.State(answer) : null
            ),
            note
        );

    public override string Next(string examination) => $"Nächste {examination} spätestens am";

    public override string DangerLater => "könnte eine Gefahr werden bis";

    public override string Document(string? title, string? revision, string? page) =>
        $"{Printed.Text(title)}, Ausgabe {Printed.Text(revision)}, Seite\u00A0{Printed.Text(page)}";

    public override string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}: {removed} abgenommen, {fitted} angebracht. Grund: {reason}. Ausgeführt von {doneBy}, beaufsichtigt von {supervisedBy}.";

    public override string Removal(string removed, string reason, string doneBy, string supervisedBy, string on) =>
        $"{on}: {removed} abgenommen, nichts an seiner Stelle angebracht. Grund: {reason}. Ausgeführt von {doneBy}, "
        + $"beaufsichtigt von {supervisedBy}.";
}
