namespace ExamDocs.Workbench.Pages;

/// <summary>Names of the fields that photos are sent in.</summary>
internal static class PhotoFields
{
    /// <summary>The button that takes a photo off; its value is the criterion.</summary>
    public const string Remove = "remove-photo";

    public static string File(string criterion) => $"photo/{criterion}";

    /// <summary>The photo that the page showed when it was made.</summary>
    public static string Shown(string criterion) => $"photo-shown/{criterion}";
}
