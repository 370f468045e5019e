using System.Text;
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

    // 49 modules of 0.43 mm are 21 mm, which is all that the lines at the foot leave of the height.
    private const int MostModules = 49;
    private const int MostAtHalfMillimetre = 41;

    // A text of more bytes fits no code of that size, so none is tried.
    private const int MostBytes = 150;

    /// <param name="identity">Of kind due-label.</param>
    /// <param name="visit">The visit the item belongs to.</param>
    /// <param name="item">An item of it for which <see cref="IsFor"/> is true.</param>
    /// <exception cref="ArgumentException">The item may not be used or not be reported, or has no such day.</exception>
    public DueLabelModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item)
    {
        if (!IsFor(item) || !visit.Items.Contains(item))
            throw new ArgumentException($"{item.Item.Id} gets no next-examination label", nameof(item));
        (Identity, Determined, Item) = (identity, visit, item);
        QrText = $"EXAMDOCS:{identity.Number}:{item.Item.Id}";
        Qr = Encoding.UTF8.GetByteCount(QrText) > MostBytes ? null : Readable(new QrMatrix(QrText));
        Text = DueLabelText.Fit(this);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    /// <summary>What the QR code says: EXAMDOCS, the document's number and the item, between colons.</summary>
    public string QrText { get; }

    /// <summary>Null where the identity is too long for a code of readable size.</summary>
    public QrMatrix? Qr { get; }

    /// <summary>Side of one module of the code in millimetres: at least 0.43, so that it stays above 0.4 at 95 %.</summary>
    public decimal QrModuleMm => Qr is { Modules: > MostAtHalfMillimetre } ? 0.43m : 0.5m;

    /// <summary>The last day of use comes before the next examination or on its day: no examination makes up for it.</summary>
    public bool EndsBefore => Item.Until is { } until && !(Item.NextExaminationBy < until);

    /// <summary>The earlier of the two days, inclusive: the one that is printed large.</summary>
    public LocalDate Day => EndsBefore ? Item.Until!.Value : Item.NextExaminationBy!.Value;

    public string Caption => EndsBefore ? Words.NotAfter : Words.NextBy;

    /// <summary>The later of the two days, in words; null where there is one day only.</summary>
    public string? Also =>
        (EndsBefore, Item.NextExaminationBy, Item.Until) switch
        {
            (true, { } next, _) => $"{Words.NextBy} {Printed.Day(next)}",
            (false, _, { } until) => $"{Words.NotAfter} {Printed.Day(until)}",
            _ => null,
        };

    public string Id => Printed.Text(Item.Item.Id);

    public string Origin =>
        Words.Origin(Printed.Text(Determined.Record.Visit.Reference), Item.ExaminedOn, Phrases.Regime(Item.Regime).ShortLaw);

    /// <summary>
    /// What does not fit on the label, in words; empty where everything does. With anything here it is not to be printed.
    /// </summary>
    public IReadOnlyList<string> Misfits =>
        [.. Text.Misfits, .. Qr is null ? ["the identity, into a QR code of readable size"] : Array.Empty<string>()];

    internal DueLabelText Text { get; }

    internal double QrSideMm => Qr is null ? 0 : (double)(Qr.Modules * QrModuleMm);

    /// <summary>Whether the item gets such a label: examined, fit or fit until a day, free of errors, and with a day to print.</summary>
    public static bool IsFor(DeterminedItem item) =>
        item.MayBeReported && item.Outcome is (Outcome.Fit or Outcome.FitUntil) && (item.NextExaminationBy ?? item.Until) is not null;

    private static QrMatrix? Readable(QrMatrix matrix) => matrix.Modules <= MostModules ? matrix : null;
}
