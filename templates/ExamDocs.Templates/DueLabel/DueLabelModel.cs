using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.DueLabel.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.DueLabel;

/// <summary>
/// A label of 70 x 37 mm for an item that may stay in service: the day by which it must be examined, or the day after
/// which it is not to be used where that comes first.
/// </summary>
public sealed class DueLabelModel
{
    private static DueLabelPhrases Words => DueLabelPhrases.Current;

    // Half of the label's height and a little more.
    private const decimal MostCodeMm = 20;

    /// <param name="identity">Of kind due-label.</param>
    /// <param name="visit">The visit the item belongs to.</param>
    /// <param name="item">An item of it for which <see cref="IsFor"/> is true.</param>
    /// <exception cref="ArgumentException">The item may not be used or not be reported, or has no such day.</exception>
    public DueLabelModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item)
    {
        if (!IsFor(item) || !visit.Items.Contains(item))
            throw new ArgumentException($"{item.Item.Id} gets no next-examination label", nameof(item));
        (Identity, Determined, Item) = (identity, visit, item);
        Whom = WhomToRing.Of(identity, visit, item);
        CodeText = CodeText.Of(identity, visit, item, CodeSays);
        Text = DueLabelText.Fit(this);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    /// <summary>What its code says, where there is room for all of it.</summary>
    public CodeText CodeText { get; }

    /// <summary>Its code; without a matrix where the identity is too long for a code of readable size.</summary>
    public ItemCode Code => Text.Code;

    public WhomToRing Whom { get; }

    /// <summary>What is marked on the item.</summary>
    public string Serial => SerialLine.Of(Item.Item);

    /// <summary>The last day of use comes before the next examination or on its day: no examination makes up for it.</summary>
    public bool EndsBefore => Item.Until is { } until && !(Item.NextExaminationBy < until);

    /// <summary>The earlier of the two days, inclusive: the one that is printed large.</summary>
    public LocalDate Day => EndsBefore ? Item.Until!.Value : Item.NextExaminationBy!.Value;

    public string Caption => EndsBefore ? Words.NotAfter : Words.NextBy;

    /// <summary>The caption in few words.</summary>
    public string ShortCaption => EndsBefore ? Words.ShortNotAfter : Words.ShortNextBy;

    /// <summary>The later of the two days, in words; null where there is one day only.</summary>
    public string? Also => Later is { } later ? $"{(EndsBefore ? Words.NextBy : Words.NotAfter)} {Words.ShortDay(later)}" : null;

    /// <inheritdoc cref="Also"/>
    public string? ShortAlso =>
        Later is { } later ? $"{(EndsBefore ? Words.ShortNextBy : Words.ShortNotAfter)} {Words.ShortDay(later)}" : null;

    public string Id => Printed.Text(Item.Item.Id);

    /// <summary>The small print at the foot.</summary>
    public string Foot => $"{Words.IssuedOn(Identity.IssuedOn)} · {Words.PageOne}. {Origin} {Caution}";

    /// <summary>How to check the label, and what comes before it.</summary>
    public string Caution => Words.Caution(Item.RegimeId);

    public string Origin =>
        Words.Origin(Printed.Text(Determined.Record.Visit.Reference), Item.ExaminedOn, Phrases.Regime(Item.Regime).ShortLaw);

    /// <summary>
    /// What does not fit on the label, in words; empty where everything does. With anything here it is not to be printed.
    /// </summary>
    public IReadOnlyList<string> Misfits =>
        [.. Text.Misfits, .. IsIdTooLongForCode ? ["the identity, into a QR code of readable size"] : Array.Empty<string>()];

    internal DueLabelText Text { get; }

    // Whatever else stands on the label.
    private bool IsIdTooLongForCode => ItemCode.Of(CodeText, new CodeRoom(0.375m, MostCodeMm)).Matrix is null;

    /// <summary>Whether the item gets such a label: examined, fit or fit until a day, free of errors, and with a day to print.</summary>
    public static bool IsFor(DeterminedItem item) =>
        item.MayBeReported && item.Outcome is (Outcome.Fit or Outcome.FitUntil) && (item.NextExaminationBy ?? item.Until) is not null;

    private LocalDate? Later => EndsBefore ? Item.NextExaminationBy : Item.Until;

    private IReadOnlyList<string> CodeSays =>
        [
            $"{ShortCaption} {Printed.Day(Day)}",
            .. Later is { } later
                ? [$"{(EndsBefore ? Words.ShortNextBy : Words.ShortNotAfter)} {Printed.Day(later)}"]
                : Array.Empty<string>(),
        ];
}
