using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class PartIsNotOnItself : Rule<ItemCase>
{
    public PartIsNotOnItself()
        : base(
            new RuleInfo(
                "CON005",
                Severity.Error,
                "No item is fitted to itself, directly or in a circle",
                "An assembly has a top: what hangs in a circle hangs on nothing.",
                $"Correct fittedTo so that the items form no circle.",
                "common practice, no source"
            )
        ) => Forbid(IsInCircle, "/fittedTo", _ => $"it is fitted to itself, directly or in a circle");

    private static bool IsInCircle(ItemCase item)
    {
        var seen = new HashSet<ItemCase>();
        var open = new Stack<ItemCase>(item.Wholes);
        while (open.TryPop(out var whole))
        {
            if (whole == item)
                return true;
            if (seen.Add(whole))
                whole.Wholes.ToList().ForEach(open.Push);
        }
        return false;
    }
}
