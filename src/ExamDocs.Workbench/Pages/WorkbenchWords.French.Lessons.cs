namespace ExamDocs.Workbench.Pages;

/// <content>French, for the page that prints what the records teach.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class French
    {
        public override string Lessons => "Ce que les enregistrements apprennent";
        public override string LessonsHow =>
            "Combien d’équipements ont été retirés pour usure ou défaut, combien de temps durent les ponts de corde, à "
            + "quelle vitesse ils s’amincissent, pourquoi on retire du matériel, et si deux vérificateurs voient la même "
            + "chose : compté dans le registre.";
        public override string LessonsDecideNothing => "Ces nombres ne valent que pour ce registre et ne décident d’aucun équipement.";
        public override string NothingToLearn => "Aucune vérification n’est enregistrée : il n’y a rien à compter.";
        public override string WhoseKit => "À qui est le matériel";
        public override string EverybodysKit => "À tous, dans le registre";
        public override string DownloadLessons => "Télécharger les pages (PDF)";
        public override string DownloadNumbers => "Télécharger les nombres (classeur)";
        public override string LessonsTakeAMoment =>
            "Les pages sont imprimées pour vous seul et n’ont pas de numéro. Cela prend quelques secondes.";
    }
}
