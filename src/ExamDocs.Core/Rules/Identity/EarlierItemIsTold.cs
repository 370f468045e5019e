using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Core.Sentences;

namespace ExamDocs.Core.Rules.Identity;

public sealed class EarlierItemIsTold : Rule<ItemCase>
{
    public EarlierItemIsTold()
        : base(
            new RuleInfo(
                "IDN011",
                Severity.Error,
                "An item that resembles an earlier withdrawn one says whether it is the same",
                "What was taken out of service comes back by a new tag, another spelling or another owner's list, and its "
                    + "history stays behind.",
                $"Compare the item with the earlier record. If it is the same item, correct what is typed, or type the earlier id "
                    + $"under formerly. If it is another, fill in notTheSameAs: the earlier id, and how the two differ.",
                "common practice, no source"
            )
        ) =>
        Each(i =>
            i.Context.History.Questions.Where(q => i.ItemId is not null && string.Equals(q.ItemId, i.ItemId, StringComparison.Ordinal))
                .OrderBy(q => q.On)
                .ThenBy(q => q.OtherId, StringComparer.Ordinal)
                .Select(q => new Fault(MemberOf(q), Words(q)))
                .Distinct()
        );

    private static string MemberOf(IdentityQuestion q) => q.Member.Length > 0 && !q.OtherOwner ? $"/{q.Member}" : "/id";

    private static Message Words(IdentityQuestion q)
    {
        Message other =
            q.OtherOwner ? (Message)$"item {q.OtherId} of another owner"
            : string.Equals(q.ItemId, q.OtherId, StringComparison.Ordinal) ? (Message)$"the earlier item {q.OtherId}"
            : $"item {q.OtherId}";
        var document = q.Document is null ? "" : $" ({q.Document})";
        return q.Member.Length == 0 || q.OtherOwner
            ? (Message)$"it may be {other}, which was {State(q.State)} on {q.On}{document}"
            : $"it may be {other}, which was {State(q.State)} on {q.On}{document}; {Name(q.Member)} was {q.There}, and is {q.Here} here";
    }

    private static Message State(EarlierState state) =>
        state switch
        {
            EarlierState.Destroyed => $"recorded as destroyed",
            EarlierState.Held => $"held as not determined",
            EarlierState.LaterDefect => $"found with a defect that could become a danger",
            EarlierState.Quarantined => $"put in quarantine",
            EarlierState.Lost => $"recorded as lost",
            _ => $"withdrawn",
        };

    private static Message Name(string member) =>
        member switch
        {
            "partNumber" => $"the part number",
            "ownersMark" => $"the owner's mark",
            "manufactured" => $"the date of manufacture",
            "serial" => $"the serial number",
            "maker" => $"the maker",
            "model" => $"the model",
            "category" => $"the category",
            _ => Message.AsIs(member),
        };
}
