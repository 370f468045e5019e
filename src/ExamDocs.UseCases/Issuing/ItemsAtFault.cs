using ExamDocs.Core.Determination;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Which items of a schedule cannot be printed whole, so that they alone are left out of it.</summary>
/// <param name="LeftOut">All that the next try goes without.</param>
/// <param name="Refused">Those of them that are refused now, each with what is wrong.</param>
internal sealed record ItemsAtFault(LeftOutItems LeftOut, IReadOnlyList<(DeterminedItem Item, string Text)> Refused)
{
    /// <returns>Null where a fault belongs to no item, or to one that is already left out and not named.</returns>
    public static ItemsAtFault? Of(DocumentJob job, IReadOnlyList<PrintFault> faults)
    {
        if (job.Without is null || faults.Any(f => f.Item is null))
            return null;
        var (refused, named) = (new List<(DeterminedItem, string)>(), job.LeftOut.AreNamed);
        foreach (var fault in faults.GroupBy(f => f.Item, StringComparer.Ordinal))
        {
            var items = job.Items.Where(i => Is(i, fault.Key)).ToList();
            if (items.Count == 0 && (!job.LeftOut.AreNamed || !job.Visit.Items.Any(i => Is(i, fault.Key))))
                return null;
            // An item that gets no report anyway is named in the schedule as not reported.
            named &= items.Count > 0;
            refused.AddRange(items.Select(i => (i, string.Join("; ", fault.Take(3).Select(f => f.Words)))));
        }
        return new ItemsAtFault(new LeftOutItems([.. job.LeftOut.Items, .. refused.Select(r => r.Item1)], named), refused);
    }

    private static bool Is(DeterminedItem item, string? printed) =>
        string.Equals(Printed.Text(item.Item.Id), printed?.Trim(), StringComparison.Ordinal);
}
