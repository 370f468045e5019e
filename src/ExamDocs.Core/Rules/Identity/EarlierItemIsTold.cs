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
                "An item that may be one withdrawn before is told from it",
                "What was taken out of service comes back by a new tag, another spelling or another owner's list, and its "
                    + "history stays behind.",
                "Hold the item against the earlier record. Where it is that item, correct what is typed, or type the earlier "
                    + "id under formerly. Where it is another, fill notTheSameAs: the earlier id, and how the two are told apart.",
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

    private static string Words(IdentityQuestion q)
    {
        var other =
            q.OtherOwner ? $"item {q.OtherId} of another owner"
            : string.Equals(q.ItemId, q.OtherId, StringComparison.Ordinal) ? $"the earlier item {q.OtherId}"
            : $"item {q.OtherId}";
        var difference = q.Member.Length == 0 || q.OtherOwner ? "" : $"; its {Name(q.Member)} was {q.There}, and is {q.Here} here";
        return $"it may be {other}, which was {State(q.State)} on "
            + $"{Say.Day(q.On)}{(q.Document is null ? "" : $" ({q.Document})")}{difference}";
    }

    private static string State(EarlierState state) =>
        state switch
        {
            EarlierState.Destroyed => "recorded as destroyed",
            EarlierState.Held => "held as not determined",
            EarlierState.LaterDefect => "found with a defect that could become a danger",
            _ => "withdrawn",
        };

    private static string Name(string member) =>
        member switch
        {
            "partNumber" => "part number",
            "ownersMark" => "owner's mark",
            "manufactured" => "date of manufacture",
            "serial" => "serial number",
            _ => member,
        };
}
