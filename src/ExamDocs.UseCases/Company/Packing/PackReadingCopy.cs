using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.AuditPack;
using ExamDocs.Templates.AuditPack.Wording;
using ExamDocs.Templates.Shared.Wording.Kinds;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>The reading copy of a pack: its own pages with every document and all evidence between them.</summary>
/// <param name="pack">What goes into it.</param>
/// <param name="asked">What it is asked to show.</param>
/// <param name="register">Where the documents are.</param>
internal sealed class PackReadingCopy(GatheredPack pack, PackQuestion asked, DocumentRegister register)
{
    private readonly PackPhrases _words = PackPhrases.Languages.In(asked.Language);
    private readonly KindPhrases _kinds = KindPhrases.Languages.In(asked.Language);

    /// <summary>The documents of each group of pages: labels share one, everything else has its own.</summary>
    private readonly List<List<(PackDocument Document, IssuedDocument Issued)>> _groups = [];

    /// <summary>The contents with the page on which each document and each file begins, those in front not counted.</summary>
    public PackContents Paged(CancellationToken cancellation)
    {
        var (next, room, size) = (1, 0, (SmallSize?)null);
        var documents = new List<PackDocument>();
        foreach (var (document, issued) in pack.Contents.Documents.Zip(pack.Enclosed))
        {
            cancellation.ThrowIfCancellationRequested();
            var content = register.Content(issued);
            var pages = CopyPart.PagesOf(content);
            var small = pages is null ? null : SmallPages.Of(content);
            var shares =
                small is not null
                && small == size
                && room > 0
                && string.Equals(documents[^1].Kind, document.Kind, StringComparison.Ordinal);
            documents.Add(
                document with
                {
                    Page =
                        pages is null ? null
                        : shares ? next - 1
                        : next,
                    Pages = pages ?? document.Pages,
                }
            );
            (size, room) = (small, small is null ? 0 : (shares ? room : small.PerPage) - 1);
            next += shares ? 0 : pages ?? 0;
            if (pages is null)
                continue;
            if (!shares)
                _groups.Add([]);
            _groups[^1].Add((documents[^1], issued));
        }
        var evidence = new List<PackEvidence>();
        foreach (var file in pack.Contents.Evidence)
        {
            evidence.Add(file with { Page = file.Pages is null ? null : next });
            next += file.Pages ?? 0;
        }
        return pack.Contents with { Documents = documents, Evidence = evidence };
    }

    /// <summary>How many parts there are but its own pages, once the pages are known.</summary>
    public int Parts => _groups.Count + pack.Evidence.Count(e => e.Pages is not null);

    /// <param name="to">Where the file goes.</param>
    /// <param name="paged">The contents with their pages.</param>
    /// <param name="front">The pages before the documents.</param>
    /// <param name="back">The pages behind all.</param>
    /// <param name="done">Called after each part.</param>
    /// <param name="cancellation">Stops between two parts.</param>
    public void Write(
        Stream to,
        PackContents paged,
        IReadOnlyList<byte[]> front,
        IReadOnlyList<byte[]> back,
        Action done,
        CancellationToken cancellation
    )
    {
        IReadOnlyList<CopyPart> parts =
        [
            .. front.Select((pdf, n) => Own($"front {n}", pdf) with { IsFront = true }),
            .. _groups.Select(Part),
            .. paged.Evidence.Zip(pack.Evidence).Where(e => e.First.Page is not null).Select(e => Part(e.First, e.Second)),
            .. back.Select((pdf, n) => Own($"back {n}", pdf)),
        ];
        ReadingCopy.Write(
            to,
            parts,
            new CopyFacts($"{_words.Title}: {asked.Employer}", asked.Language.Tag, asked.Today, _words.PageMark),
            done,
            cancellation
        );
    }

    private static CopyPart Own(string key, byte[] pdf) =>
        new(key, null, [], CopyPart.PagesOf(pdf) ?? throw new InvalidDataException("The pages of the pack cannot be read back."), () =>
            pdf
        );

    private CopyPart Part(List<(PackDocument Document, IssuedDocument Issued)> group)
    {
        var (first, issued) = group[0];
        return new(first.Number, TitleOf(first), [_words.Documents, _kinds.Word(first.Kind)], first.Pages, () =>
            register.Content(issued) is var content && SmallPages.Of(content) is null
                ? content
                : SmallPages.Sheet([.. group.Select(g => register.Content(g.Issued))])
        )
        {
            Also = [.. group.Skip(1).Select(g => (g.Document.Number, TitleOf(g.Document)))],
        };
    }

    private static string TitleOf(PackDocument document) => document.Items is [var only] ? $"{document.Number} {only}" : document.Number;

    private CopyPart Part(PackEvidence evidence, EvidenceFile file) =>
        new(evidence.Name, evidence.Name, [_words.EvidenceHeading], evidence.Pages!.Value, file.Readable);
}
