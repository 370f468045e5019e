using System.Security.Cryptography;
using System.Text;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Report;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Issuing;

/// <summary>Something that does not fit on the paper as it should.</summary>
/// <param name="Rule">The rule of printing that says so: an error holds back whatever is no warning.</param>
/// <param name="Text">What it is, in words that follow the document's name.</param>
internal sealed record Shortfall(RuleInfo Rule, string Text);

/// <summary>A document that is to be issued: everything but its number and its day.</summary>
/// <param name="Type">What it is.</param>
/// <param name="Visit">The visit it is made from, which goes into the file.</param>
/// <param name="Items">The items it is about, in the order of the record.</param>
/// <param name="Compose">Makes its HTML once it has an identity.</param>
internal sealed record DocumentJob(
    DocumentType Type,
    DeterminedVisit Visit,
    IReadOnlyList<DeterminedItem> Items,
    Func<DocumentRenderer, DocumentIdentity, Task<string>> Compose
)
{
    private static readonly LocalDate NoDay = new(2000, 1, 1);

    /// <summary>What does not fit on the paper as it should; looked at before a number is taken.</summary>
    public Func<IReadOnlyList<Shortfall>> Shortfalls { get; init; } = static () => [];

    /// <summary>Placeholders for the number and the day of a document that has none yet.</summary>
    public static DocumentIdentity Draft(DocumentType type) => new(type.Kind, $"{type.Letter}-0000-000000", NoDay, "0");

    /// <summary>The language it is made in.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>The issuer's, where there is one.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>The same in another language, under another head, with another signature.</summary>
    public DocumentJob In(PrintStyle style) =>
        this with
        {
            Language = style.Language,
            Letterhead = style.Letterhead,
            Signer = style.Signer,
        };

    /// <summary>The same as another is printed.</summary>
    public DocumentJob Like(DocumentJob other) =>
        this with
        {
            Language = other.Language,
            Letterhead = other.Letterhead,
            Signer = other.Signer,
        };

    /// <summary>Whether reports were asked for one by one.</summary>
    public bool PerItem { get; init; }

    /// <summary>Who signs it electronically; null where it is to be signed by hand.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>Name of the person whose signature it calls for; null where it has no block for one.</summary>
    public string? SignedBy { get; init; }

    /// <summary>From how far labels for what may not be used are to be read.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;

    /// <summary>The report that it is a copy of; null for what is no copy.</summary>
    public CopiedReport? CopyOf { get; init; }

    /// <summary>Makes the job of the copy that has to go with it, once it is issued itself; null where none has to.</summary>
    public Func<CopiedReport, DocumentJob>? Copy { get; init; }

    /// <summary>Items that it goes without because they cannot be printed whole.</summary>
    public LeftOutItems LeftOut { get; init; } = LeftOutItems.None;

    /// <summary>
    /// Makes the same document without some of its items; gives null where none would be left. Null for what is about one item.
    /// </summary>
    public Func<LeftOutItems, DocumentJob?>? Without { get; init; }

    /// <summary>One file for all items of a kind: a report, or the evidence, where they were not asked for one by one.</summary>
    public bool IsSchedule => !PerItem && (Type == DocumentTypes.Report || Type == DocumentTypes.Evidence);

    /// <summary>A warning is printed even if some of its characters cannot be.</summary>
    public bool IsWarning => Type == DocumentTypes.QuarantineLabel || Type == DocumentTypes.Notice;

    /// <summary>Its HTML, in its language.</summary>
    public Task<string> RenderAsync(DocumentRenderer renderer, DocumentIdentity identity) =>
        Language.InAsync(() => Compose(renderer, identity with { Letterhead = Letterhead, Signature = Signature ?? identity.Signature }));

    /// <summary>As printed; null where it is to be signed by hand.</summary>
    public ElectronicSignature? Signature =>
        Signer is { Key: var key }
            ? new ElectronicSignature(key.Name, key.Issuer, key.SerialNumber, key.Fingerprint, Signer.IsTimestamped)
            : null;

    /// <summary>What it rests on besides the record.</summary>
    public DocumentBasis Basis(DocumentIdentity identity) =>
        new()
        {
            Number = identity.Number,
            Kind = identity.Kind,
            Items = [.. Items.Select(i => i.Item.Id ?? "")],
            IssuedOn = identity.IssuedOn,
            AsOf = Visit.AsOf,
            Language = Language,
            Version = identity.SoftwareVersion,
            PerItem = PerItem,
            Reading = Reading,
            Letterhead = Letterhead,
            CopyOf = CopyOf,
            Signature = Signature,
            Evidence = identity.EvidenceFile,
            Replaces = [.. identity.Replaces.Select(r => new ReplacedDocument(r.Number, r.Reason))],
            OwnRules = OwnRules.Of(Visit),
            History = Visit.History,
        };

    /// <summary>The page without its number and day.</summary>
    public Task<string> DraftAsync(DocumentRenderer renderer) => RenderAsync(renderer, Draft(Type));

    /// <summary>
    /// Names the document by what it says: the same record, rules, template and language give the same key,
    /// whatever the day and the number.
    /// </summary>
    public string Key(string draft) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{Type.Kind}\n{draft}")));
}
