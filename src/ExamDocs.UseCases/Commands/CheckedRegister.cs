namespace ExamDocs.UseCases.Commands;

/// <summary>What a check of a register found.</summary>
/// <param name="Faults">One sentence for each thing that is wrong.</param>
/// <param name="Notes">One sentence for each thing that somebody should know and that may be as it should.</param>
/// <param name="Sound">That it is sound, and how much it holds; null where anything is wrong.</param>
public sealed record CheckedRegister(IReadOnlyList<string> Faults, IReadOnlyList<string> Notes, string? Sound)
{
    /// <summary>What was left out, in a sentence; null where everything was looked at.</summary>
    public string? NotLookedAt { get; init; }

    /// <summary>The file by which a later check leaves out what this one found sound; null where anything is wrong.</summary>
    public ReadOnlyMemory<byte>? File { get; init; }
}
