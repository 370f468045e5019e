namespace ExamDocs.Workbench.Pages;

/// <content>German, for the page that prints what the records teach.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class German
    {
        public override string Lessons => "Was die Aufzeichnungen lehren";
        public override string LessonsHow =>
            "Wie viele Gegenstände wegen Abnutzung oder eines Mangels ausgesondert wurden, wie lange Seilbrücken halten, "
            + "wie schnell sie dünner werden, warum Ausrüstung ausgesondert wird und ob zwei Prüfende dasselbe sehen: aus "
            + "dem Register gezählt.";
        public override string LessonsDecideNothing =>
            "Diese Zahlen gelten nur für dieses Register und entscheiden über keinen Gegenstand.";
        public override string NothingToLearn => "Keine Prüfung ist aufgezeichnet: es gibt nichts zu zählen.";
        public override string WhoseKit => "Wessen Ausrüstung";
        public override string EverybodysKit => "Alle im Register";
        public override string DownloadLessons => "Die Seiten herunterladen (PDF)";
        public override string DownloadNumbers => "Die Zahlen herunterladen (Arbeitsmappe)";
        public override string LessonsTakeAMoment =>
            "Die Seiten werden nur für Sie gedruckt und bekommen keine Nummer. Das dauert einige Sekunden.";
    }
}
