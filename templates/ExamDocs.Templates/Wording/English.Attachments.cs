namespace ExamDocs.Templates.Wording;

public static partial class English
{
    /// <summary>What a reading program says of the files within a document.</summary>
    public static class Attachments
    {
        public const string Record = "The examination as recorded (examdocs/1)";

        public const string Outcome = "What was determined from it, with the reasons (examdocs-findings/1)";

        public const string Document = "What the document rests on besides (examdocs-document/1)";
    }
}
