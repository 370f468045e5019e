using ExamDocs.Core.Records;

namespace ExamDocs.Core.Known;

/// <summary>Compares withdrawals by value: a record would compare its lists by reference.</summary>
internal sealed class SameWithdrawal : IEqualityComparer<PastWithdrawal>
{
    public bool Equals(PastWithdrawal? x, PastWithdrawal? y) =>
        x is not null && y is not null && string.Equals(Text(x), Text(y), StringComparison.Ordinal);

    public int GetHashCode(PastWithdrawal obj) => StringComparer.Ordinal.GetHashCode(Text(obj));

    private static string Text(PastWithdrawal w) =>
        string.Join(
            '\n',
            w.ItemId,
            w.Document,
            w.On,
            string.Join(' ', w.Codes),
            w.NeverReleasable,
            string.Join(' ', w.Parts),
            string.Join(' ', w.Documents),
            w.IsOfThisVisit,
            w.Notice,
            w.SharesDay
        );
}
