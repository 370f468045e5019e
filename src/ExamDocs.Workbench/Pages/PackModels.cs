using ExamDocs.Workbench.Desk;

namespace ExamDocs.Workbench.Pages;

/// <summary>What a pack is asked to show, as typed; empty texts for what was left out.</summary>
public sealed record AskedPack(string Employer, string Premises, string Items, string AsOf, string Language);

/// <summary>Where an audit pack is asked for.</summary>
/// <param name="Employers">Those on record.</param>
/// <param name="Asked">What stands in the form.</param>
/// <param name="Kept">Packs asked for since the program started.</param>
/// <param name="RegisterMissing">That the register is not there; null where it is.</param>
/// <param name="Refused">Why no pack was started; null where nothing is wrong.</param>
/// <param name="Words">The language of the page.</param>
public sealed record PackPageModel(
    IReadOnlyList<string> Employers,
    AskedPack Asked,
    IReadOnlyList<KeptPack> Kept,
    string? RegisterMissing,
    string? Refused,
    WorkbenchWords Words
);

/// <summary>An audit pack: how far it is, or what is in it.</summary>
public sealed record PackedPageModel(KeptPack Pack, WorkbenchWords Words)
{
    /// <summary>Gaps shown on the page; the files have them all.</summary>
    public const int MostGaps = 200;
}
