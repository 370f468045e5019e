using ExamDocs.Templates.Label.Wording;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.DueLabel.Wording;

/// <inheritdoc />
internal sealed class German : DueLabelPhrases
{
    public override string Kind => "Prüfplakette";
    public override string NextBy => "Nächste Prüfung bis";
    public override string NotAfter => "Nicht mehr benutzen nach dem";
    public override string ShortNextBy => "Prüfen bis";
    public override string ShortNotAfter => "Nur nutzen bis";
    public override string SignLabel => "Ein Kalenderblatt";
    public override string PageOne => "Seite 1 von 1";

    public override string Title(string number) => $"{Kind} {number}";

    public override string IssuedOn(LocalDate day) => $"{CommonPhrases.Languages.German.Issued} {Printed.Day(day)}";

    public override string ShortDay(LocalDate day) => Numbers(day);

    public override string Origin(string visit, LocalDate? examined, string law) =>
        $"Prüfauftrag {visit}. Geprüft am {Printed.Day(examined)} nach {law}.";

    public override string Caution(string? regime) =>
        $"Die Nummer mit dem Register des Ausstellers vergleichen. {LabelPhrases.Languages.German.Caution(regime)}";
}
