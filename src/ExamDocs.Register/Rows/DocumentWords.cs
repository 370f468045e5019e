using ExamDocs.Register.Model;

namespace ExamDocs.Register.Rows;

/// <summary>The words in which the state and the end of a document are stored.</summary>
internal static class DocumentWords
{
    public static string Of(DocumentState state) =>
        state switch
        {
            DocumentState.Issued => "issued",
            DocumentState.Void => "void",
            _ => "pending",
        };

    public static DocumentState State(string word) =>
        word switch
        {
            "issued" => DocumentState.Issued,
            "void" => DocumentState.Void,
            _ => DocumentState.Pending,
        };

    public static string Of(DocumentEnd end) =>
        end switch
        {
            DocumentEnd.Replaced => "replaced",
            DocumentEnd.Withdrawn => "withdrawn",
            _ => "ended",
        };

    public static DocumentEnd? End(string? word) =>
        word switch
        {
            "replaced" => DocumentEnd.Replaced,
            "withdrawn" => DocumentEnd.Withdrawn,
            "ended" => DocumentEnd.Ended,
            _ => null,
        };
}
