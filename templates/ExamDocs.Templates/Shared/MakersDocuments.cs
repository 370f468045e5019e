using ExamDocs.Core.Determination;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Shared;

/// <summary>The maker's documents that an item's limits are taken from, as they are printed.</summary>
internal static class MakersDocuments
{
    /// <summary>Each with revision and page; not recorded where there is none.</summary>
    public static string Of(DeterminedItem item) =>
        item.LimitsSources.Count == 0
            ? Phrases.Common.NotRecorded
            : Printed.List(item.LimitsSources.Select(s => ItemPhrases.Current.Document(s.Title, s.Revision, s.Page)));
}
