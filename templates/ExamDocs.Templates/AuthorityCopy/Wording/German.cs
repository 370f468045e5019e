using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using ExamDocs.Templates.Shared.Wording.LawAndSources;

namespace ExamDocs.Templates.AuthorityCopy.Wording;

/// <inheritdoc />
internal sealed class German : AuthorityCopyPhrases
{
    public override string Title => "Abschrift eines Berichts für die Aufsichtsbehörde";
    public override string To => "An die Aufsichtsbehörde";
    public override string ByLaw => "Gesetzlicher Empfänger";
    public override string From => "Vom Ersteller des Berichts";
    public override string Why => "Warum sie gesandt wird";
    public override string Which => "Die Gegenstände und die Gefahr";
    public override string ColumnItem => "Gegenstand";
    public override string ColumnDefect => "Teil und Mangel";
    public override string ColumnState => "Zustand des Gegenstands und was nötig ist";
    public override string Employer => "Erstellt für (Arbeitgeber)";
    public override string Owner => "Eigentümer (Vermieter, Leasinggeber)";
    public override string Premises => "Prüfort";
    public override string ExaminedOn => "Geprüft am";
    public override string Told => "Arbeitgeber unterrichtet";
    public override string Enclosed => "Beigefügt";
    public override string SentBy => "Gesandt von:";

    public override string RunningTitle(string original) => $"Abschrift des Berichts {original} für die Aufsichtsbehörde";

    public override string Lead(string original) =>
        $"Deckblatt zu einer Abschrift des Berichts {original}. Die Abschrift folgt auf der nächsten Seite, vollständig.";

    public override string Imminent(Duty duty) =>
        "Nach Ansicht des Erstellers des Berichts bedeutet ein Mangel eine bestehende oder unmittelbar drohende Gefahr "
        + "schwerer Verletzung. Dann geht so bald wie möglich eine Abschrift des Berichts an die Aufsichtsbehörde "
        + $"({Terms.German.Source(duty.Source)}; {LawAndSourcesPhrases.Languages.German.Confidence(duty.Confidence)}).";

    public override string Copy(string original, string number) =>
        $"Eine Abschrift des Berichts {original} im selben Wortlaut. Ihre Seiten tragen die Nummer dieser Abschrift, "
        + $"{number}; der Bericht selbst trägt {original} und die Unterschrift. Beide sind aus derselben Aufzeichnung "
        + "erstellt.";

    public override string SignedCopy(string original, string number) =>
        $"Eine Abschrift des Berichts {original} im selben Wortlaut. Ihre Seiten tragen die Nummer dieser Abschrift, "
        + $"{number}; der Bericht selbst trägt {original}. Jede der beiden Dateien ist elektronisch unterschrieben. Beide "
        + "sind aus derselben Aufzeichnung erstellt.";

    public override string Original(string original) => $"SHA-256 der Datei des Berichts {original}:";

    public override string Notified(Notification? told) =>
        told is null
            ? CommonPhrases.Languages.German.NotRecorded
            : $"{Printed.Text(told.Whom)}, {Printed.Text(told.How)}, {Printed.Day(told.On)}";
}
