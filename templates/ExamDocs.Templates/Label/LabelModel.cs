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

    // At 95 % a module is still 0.4 mm. A code as high as the lines beside it takes no room from the words; one of a long identity may
    // be higher.
    private static readonly CodeRoom[] CodeRooms = [new(0.5m, 23), new(0.43m, 23)];
    private static readonly CodeRoom LargestCode = new(0.43m, 31.5m);

    private const int MostLettersOfExaminer = 60;
    private const int MostLettersOfNotice = 30;

    // Within the edges, below the eyelet, and on the hold label below its band and sign; half a millimetre is left free.
    private const double BodyMm = 126;
    private const double HoldBodyMm = 78;

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
        Whom = WhomToRing.Of(identity, visit, item);
        var says = CodeText.Of(identity, visit, item, Words.Says(IsHold, Since));
        Code = ItemCode.Of(says, CodeRooms) is { Matrix: not null } code ? code : ItemCode.Of(says, LargestCode);
        Text = LabelText.Fit(LabelWordsOf(), Room, Reading.CapitalsMm);
    }

    public DocumentIdentity Identity { get; }

    public DeterminedVisit Determined { get; }

    public DeterminedItem Item { get; }

    public ReadingDistance Reading { get; }

    public bool IsHold => Item.Outcome is Outcome.Undetermined;

    public string Title => IsHold ? Words.HoldTitle : Words.QuarantineTitle;

    /// <summary>Its code; without a matrix where the identity is too long for a code of readable size.</summary>
    public ItemCode Code { get; }

    public WhomToRing Whom { get; }

    public string Release =>
        IsHold ? Words.ReleaseHold(Item.RegimeId)
        : Item.NeverReleasable ? Words.NeverRelease
        : Words.ReleaseByPerson(Item.RegimeId);

    public string Since => Words.SinceDay(Day);

    /// <summary>The employer, who keeps the item and may have hired it.</summary>
    public string KeptBy => Printed.Text(Determined.Record.Visit.Employer?.Name);

    public string Examiner => Printed.Text(Determined.Person(Item.Examination?.Examiner)?.Name);

    /// <summary>Names what is not printed whole; empty where everything is. The label says itself that it is shortened.</summary>
    public IReadOnlyList<string> Misfits =>
        [
            .. Text.Misfits,
            .. IsShort(Examiner) ? Array.Empty<string>() : ["the examiner's name"],
            .. Code.Matrix is null ? ["the identity, into a QR code of readable size"] : Array.Empty<string>(),
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

    /// <summary>Reference of the maker's notice that took it out of use; null where it was examined.</summary>
    internal string? TakenOutBy =>
        TakenOutUnseen.NoticeOf(Determined, Item) is { } notice ? TextWidth.Shorten(notice, MostLettersOfNotice, "…") : null;

    internal string ShownExaminer => TextWidth.Shorten(Examiner, MostLettersOfExaminer, "…");

    // What edges, eyelet, the head of the label and its foot leave of the height, millimetres.
    private double Room => (IsHold ? HoldBodyMm : BodyMm - SignAndSignalMm) - LabelFoot.Height(this);

    private double SignAndSignalMm => Math.Max((double)Reading.SignMm, SignalWord.Height(Words.Signal, SignalWidthMm, MostSignalMm));

    private LocalDate? Day => Item.ExaminedOn ?? Determined.Record.Visit.ExaminedOn;

    private IReadOnlyList<string> ShownReasons
    {
        get
        {
            var reasons = ShortReasons.Of(Item);
            if (!IsHold)
                return reasons;
            string[] noted = [.. ShortReasons.NotExamined(Item)];
            return [.. noted, Words.WhyHold, .. reasons.Skip(noted.Length)];
        }
    }

    private static bool IsShort(string text) => ReferenceEquals(TextWidth.Shorten(text, MostLettersOfExaminer, ""), text);

    private LabelWords LabelWordsOf() =>
        new(Printed.Text(Item.Item.Id), Printed.Text(Item.Item.Description), ShownReasons, KeptBy)
        {
            Serial = SerialLine.Of(Item.Item),
            Since = Since,
            Release = Release,
            Whom = Whom.Telephone is { } number ? $"{number} ({Whom.Name})" : Whom.Name,
        };
}
