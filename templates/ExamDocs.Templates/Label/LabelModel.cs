using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Label.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Label;

/// <summary>
/// A label of 100 x 150 mm for an item that is not to be used: withdrawn, or held because it is not determined. It
/// is printed whatever the record lacks.
/// </summary>
public sealed class LabelModel
{
    private static LabelPhrases Words => LabelPhrases.Current;

    // A code with more modules than this would leave no room for the words.
    private const int MostModules = 73;

    private const int MostLettersOfExaminer = 60;

    /// <summary>Line height of the signal word, as a part of its size of type.</summary>
    internal const double SignalLine = 0.758;

    /// <param name="identity">Of kind quarantine-label.</param>
    /// <param name="visit">The visit the item belongs to.</param>
    /// <param name="item">An item that is withdrawn or undetermined.</param>
    /// <param name="reading">From how far it is to be read; 1.5 m where not given.</param>
    /// <exception cref="ArgumentException">The item may be used.</exception>
    public LabelModel(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item, ReadingDistance? reading = null)
    {
        if (item.Outcome is Outcome.Fit or Outcome.FitUntil)
            throw new ArgumentException($"{item.Item.Id} may be used and gets no such label", nameof(item));
        (Identity, Determined, Item) = (identity, visit, item);
        Reading = reading ?? ReadingDistance.Default;
        QrText = $"EXAMDOCS:{identity.Number}:{item.Item.Id}";
        Qr = System.Text.Encoding.UTF8.GetByteCount(QrText) > 400 ? null : Readable(new QrMatrix(QrText));
        Text = LabelText.Fit(
            new LabelWords(Printed.Text(item.Item.Id), Printed.Text(item.Item.Description), ShownReasons, [Since, Release], Owner),
            Room,
            Reading.CapitalsMm
        );
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    public ReadingDistance Reading { get; }

    public bool IsHold => Item.Outcome is Outcome.Undetermined;

    public string Title => IsHold ? Words.HoldTitle : Words.QuarantineTitle;

    /// <summary>What the QR code says: EXAMDOCS, the document's number and the item, between colons.</summary>
    public string QrText { get; }

    /// <summary>Null where the identity is too long for a code of readable size; the label then says it in words alone.</summary>
    public QrMatrix? Qr { get; }

    /// <summary>Side of one module of the code in millimetres: at least 0.43, so that it stays above 0.4 at 95 %.</summary>
    public decimal QrModuleMm => Qr is { Modules: > 57 } ? 0.43m : 0.5m;

    public string Release =>
        IsHold ? Words.ReleaseHold
        : Item.NeverReleasable ? Words.NeverRelease
        : Words.ReleaseByPerson;

    public string Since => Words.SinceDay(Day);

    public string Owner => Printed.Text(Determined.Record.Visit.Employer?.Name);

    public string Examiner => Printed.Text(Determined.Person(Item.Examination?.Examiner)?.Name);

    /// <summary>Names what is not printed whole; empty where everything is. The label says itself that it is shortened.</summary>
    public IReadOnlyList<string> Misfits =>
        [
            .. Text.Misfits,
            .. IsShort(Examiner) ? Array.Empty<string>() : ["the examiner's name"],
            .. Qr is null ? ["the identity, into a QR code of readable size"] : Array.Empty<string>(),
            .. Reading.IsSignalRead(SignalWord.Size(Words.Signal, SignalWidthMm, MostSignalMm))
                ? Array.Empty<string>()
                : ["the signal word, at the size for its reading distance"],
        ];

    /// <summary>
    /// From how far the smaller words are read, metres; the sign and the signal word are read from <see cref="Reading"/>.
    /// </summary>
    public double WordsLegibleFromMetres => ReadingDistance.LegibleFrom(Text.TextMm);

    public RegimeWording Regime => Phrases.Regime(Item.Regime);

    internal LabelText Text { get; }

    /// <summary>Room for the signal word beside the sign, millimetres.</summary>
    internal double SignalWidthMm => IsHold ? 44 : 84 - (double)Reading.SignMm;

    /// <summary>
    /// Size of type of the signal word where its letters are few enough, millimetres; the hold label's sign has one size.
    /// </summary>
    internal double MostSignalMm => IsHold ? 15.2 : Reading.SignalMm;

    internal string ShownExaminer => TextWidth.Shorten(Examiner, MostLettersOfExaminer, "…");

    // Height that head and foot leave, millimetres; the foot is as high as its lines or its code, whichever is higher.
    private double Room =>
        (IsHold ? 73 : 79 + 42.3 - SignAndSignalMm) - Math.Max(21.5, Qr is null ? 0 : (double)(Qr.Modules * QrModuleMm) + 1.5);

    private double SignAndSignalMm => Math.Max((double)Reading.SignMm, 3 * SignalLine * Reading.SignalMm);

    private LocalDate? Day => Item.ExaminedOn ?? Determined.Record.Visit.ExaminedOn;

    private IReadOnlyList<string> ShownReasons
    {
        get
        {
            var reasons = ShortReasons.Of(Item);
            return IsHold ? [Words.WhyHold, .. reasons] : reasons;
        }
    }

    private static bool IsShort(string text) => ReferenceEquals(TextWidth.Shorten(text, MostLettersOfExaminer, ""), text);

    private static QrMatrix? Readable(QrMatrix matrix) => matrix.Modules <= MostModules ? matrix : null;
}
