using ExamDocs.Core.Cases;
using ExamDocs.Core.Identity;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>What one visit recorded and decided of an item; there is one for each id of a visit.</summary>
internal sealed class ItemEntry(RememberedVisit visit, RememberedOutcome outcome, Item item, ExaminationRecord record)
{
    public RememberedVisit Visit { get; } = visit;

    public RememberedOutcome Outcome { get; } = outcome;

    public Item Item { get; } = item;

    public ExaminationRecord Record { get; } = record;

    /// <summary>False where the visit only names the id, and says nothing of the item.</summary>
    public required bool HasRow { get; init; }

    /// <summary>Whom it is hired from, else the employer.</summary>
    public string? Owner => Record.Visit.HiredFrom?.Name ?? Record.Visit.Employer?.Name;

    public string? Premises => PremisesOf(Record);

    public LocalDate Day => Outcome.ExaminedOn ?? Visit.ExaminedOn ?? LocalDate.MinIsoValue;

    public IEnumerable<string?> Texts =>
        [Item.Id, Item.Serial, Item.OwnersMark, Item.Maker, Item.Model, Item.Description, Item.Category, Owner];

    /// <summary>Its outcome; a word that nobody knows counts as the worst.</summary>
    public Outcome Badness => OutcomeWords.Find(Outcome.Outcome) ?? Core.Records.Outcome.Withdraw;

    /// <summary>Their name, else their address; null where not recorded.</summary>
    public static string? PremisesOf(ExaminationRecord record) =>
        record.Visit.Premises is { } at ? Named(at.Name) ?? Named(at.Address) : null;

    private static string? Named(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;

    public bool IsOf(Outcome outcome) => string.Equals(Outcome.Outcome, outcome.Word(), StringComparison.Ordinal);
}
