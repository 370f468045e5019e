using ExamDocs.Core.Records;

namespace ExamDocs.Core.Sentences;

/// <summary>Names the document that a limit comes from, as printed beside the limit.</summary>
public static class LimitsSourceText
{
    /// <summary>The document in brackets with a blank before them, to be put behind the limit.</summary>
    public static string Beside(MakersLimits limits) => $" ({Of(limits)})";

    public static string Of(MakersLimits limits)
    {
        var source = limits.Source;
        if (source?.Title is null)
            return "maker's document not recorded";
        var revision = source.Revision is null ? "" : $", revision {source.Revision}";
        var page = source.Page is null ? "" : $", page {source.Page}";
        return $"{source.Title}{revision}{page}";
    }
}
