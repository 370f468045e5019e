using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Enclosures.Wording;

/// <inheritdoc />
internal sealed class German : EnclosuresPhrases
{
    public override string FileName => "Inhalt";
    public override string Title => "Beigefügte Unterlagen";
    public override string Lead => "Die Unterlagen eines Prüfauftrags in diesem Ordner. Jede ist eine eigene Datei.";
    public override string PutTogetherOn => "Zusammengestellt am";
    public override string To => "An";
    public override string From => "Vom Ersteller des Berichts";
    public override string ExaminedAt => "Ort und Tag der Prüfung";
    public override string What => "Was es ist";
    public override string Items => "Gegenstände";
    public override string Pages => "Seiten";
    public override string Sha256 => "SHA-256 beginnt mit";
    public override string NotReported => "Kein Bericht in diesem Ordner betrifft:";

    public override string HowToCheck =>
        "Um eine Unterlage zu prüfen, beim Aussteller unter einer anderweitig bekannten Telefonnummer den ganzen SHA-256-Hashwert ihrer "
        + "Datei erfragen. Die Ziffern hier helfen nur, die Dateien zu unterscheiden.";

    public override string NoDocument =>
        "Diese Seite ist eine Liste. Sie hat keine Nummer und ersetzt nichts, was in den Unterlagen steht.";

    public override string Count(int documents, int pages) =>
        $"{Printed.Count(documents)} {(documents == 1 ? "Unterlage" : "Unterlagen")}, "
        + $"{Printed.Count(pages)} {(pages == 1 ? "Seite" : "Seiten")}";
}
