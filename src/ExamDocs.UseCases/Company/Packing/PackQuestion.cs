using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>What a pack is asked to show.</summary>
/// <param name="Employer">Whose kit.</param>
/// <param name="AsOf">The day for which it says how things stand.</param>
/// <param name="Today">The day on which it is built.</param>
public sealed record PackQuestion(string Employer, LocalDate AsOf, LocalDate Today)
{
    /// <summary>Name or address of the premises; null for all.</summary>
    public string? Premises { get; init; }

    /// <summary>Ids of the items; empty for all.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];

    /// <summary>The language of the pack.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    internal string Say(Message message) => message.In(Screen);

    private MessageLanguage Screen => ReadPrintStyle.Screen(Language.Tag)!;

    internal bool IsOf(string? employer) => FirmName.Same(employer, Employer);

    /// <summary>By name or by address; a record may give both.</summary>
    internal bool IsAt(Party? premises) =>
        Premises is null || FirmName.Same(premises?.Name, Premises) || FirmName.Same(premises?.Address, Premises);

    /// <summary>Whether an item is asked for, by whose it is, where it is, and any of its ids.</summary>
    internal bool Asks(string? employer, Party? premises, IEnumerable<string?> ids) =>
        IsOf(employer) && IsAt(premises) && (Items.Count == 0 || ids.Any(id => Items.Any(asked => Folded.Same(asked, id))));
}
