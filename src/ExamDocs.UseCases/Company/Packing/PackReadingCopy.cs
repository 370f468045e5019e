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

    /// <summary>The contents with the page on which each document and each file begins, those in front not counted.</summary>
    public PackContents Paged(CancellationToken cancellation)
    {
        var next = 1;
        var documents = new List<PackDocument>();
        foreach (var (document, issued) in pack.Contents.Documents.Zip(pack.Enclosed))
        {
            cancellation.ThrowIfCancellationRequested();
            var pages = CopyPart.PagesOf(register.Content(issued));
            documents.Add(document with { Page = pages is null ? null : next, Pages = pages ?? document.Pages });
            next += pages ?? 0;
        }
        var evidence = new List<PackEvidence>();
        foreach (var file in pack.Contents.Evidence)
        {
            evidence.Add(file with { Page = file.Pages is null ? null : next });
            next += file.Pages ?? 0;
        }
        return pack.Contents with { Documents = documents, Evidence = evidence };
    }

    /// <param name="to">Where the file goes.</param>
    /// <param name="paged">The contents with their pages.</param>
    /// <param name="front">The pages before the documents.</param>
    /// <param name="back">The pages behind all.</param>
    /// <param name="done">Called after each part.</param>
    /// <param name="cancellation">Stops between two parts.</param>
    public void Write(Stream to, PackContents paged, byte[] front, byte[] back, Action done, CancellationToken cancellation)
    {
        IReadOnlyList<CopyPart> parts =
        [
            Own("front", front) with
            {
                IsFront = true,
            },
            .. paged.Documents.Zip(pack.Enclosed).Where(d => d.First.Page is not null).Select(d => Part(d.First, d.Second)),
            .. paged.Evidence.Zip(pack.Evidence).Where(e => e.First.Page is not null).Select(e => Part(e.First, e.Second)),
            Own("back", back),
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
        new(key, null, [], CopyPart.PagesOf(pdf) ?? throw new InvalidDataException("The pages of the pack cannot be read back."), () => pdf);

    private CopyPart Part(PackDocument document, IssuedDocument issued) =>
        new(
            document.Number,
            document.Items is [var only] ? $"{document.Number} {only}" : document.Number,
            [_words.Documents, _kinds.Word(document.Kind)],
            document.Pages,
            () => register.Content(issued)
        );

    private CopyPart Part(PackEvidence evidence, EvidenceFile file) =>
        new(evidence.Name, evidence.Name, [_words.EvidenceHeading], evidence.Pages!.Value, file.Readable);
}
