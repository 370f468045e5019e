using ExamDocs.Core.Findings;

namespace ExamDocs.UseCases.Recalling;

/// <summary>What a sweep does about an item.</summary>
public enum SweepAction
{
    /// <summary>Nothing: the notice does not name it.</summary>
    None,

    /// <summary>It is withdrawn, with a notice to its owner and a quarantine label.</summary>
    Withdraw,

    /// <summary>It is held until somebody has settled whether the notice names it, with a hold label.</summary>
    Hold,

    /// <summary>Nothing: an earlier sweep of this notice withdrew it, and it still is.</summary>
    IsWithdrawn,

    /// <summary>Nothing: an earlier sweep of this notice held it, and nobody has examined it since.</summary>
    IsHeld,

    /// <summary>Nothing: an earlier sweep of this notice withdrew it, and a competent person released it since.</summary>
    IsReleased,
}

/// <summary>An item of the register, what a notice says of it, and what a sweep does about it.</summary>
/// <param name="Item">The item and what the notice says of it.</param>
/// <param name="Action">What is done.</param>
/// <param name="Said">What an earlier sweep did about it, in words; null where none did anything.</param>
/// <param name="Documents">Numbers of the papers of that sweep.</param>
public sealed record PlannedItem(RecalledItem Item, SweepAction Action, Message? Said, IReadOnlyList<string> Documents)
{
    public bool IsNew => Action is SweepAction.Withdraw or SweepAction.Hold;
}
