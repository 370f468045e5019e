using System.Text.Json.Nodes;
using ExamDocs.Templates;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Kinds;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Tests.Registered;
using ExamDocs.UseCases.Verifying;
using NodaTime;
using static ExamDocs.UseCases.Tests.Registered.HelmetVisits;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Files named for people are found by later runs, whatever their names.</summary>
public sealed class NamedFilesTests : IDisposable
{
    private readonly HelmetVisits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task Files_are_named_by_the_pattern_listed_and_verified_and_a_run_without_one_leaves_them()
    {
        var issued = await _visits.IssueAsync(Visit(), r => Named(PerItem(r), "{employer} {date} {kind} {item}"));
        Assert.Contains(
            "Brackwater Tree Training and Hire Ltd 2026-05-11 next-examination label HEL-02 D-2026-000002.pdf",
            issued.Documents.Select(d => d.FileName)
        );
        Assert.Equal(issued.Documents.Select(d => d.FileName).Order(), Pdfs());
        Assert.Equal(issued.Documents.Select(d => d.FileName).Order(), List("documents").Order());

        var again = await _visits.IssueAsync(Visit(), PerItem);
        Assert.Equal(issued.Documents.Select(d => d.FileName), again.Documents.Select(d => d.FileName));
        Assert.Equal(issued.Documents.Select(d => d.FileName).Order(), Pdfs());

        var other = await _visits.IssueAsync(Visit(), r => Named(PerItem(r), "{number} {item}"));
        Assert.Contains("R-2026-000001 HEL-01.pdf", other.Documents.Select(d => d.FileName));
        Assert.Equal(other.Documents.Select(d => d.FileName).Order(), Pdfs());
        Assert.All(await VerifyAsync(Pdfs().Take(1)), f => Assert.True(f.IsValid));
    }

    [Fact]
    public async Task What_is_replaced_is_set_apart_under_its_name()
    {
        var first = Assert.Single((await _visits.IssueAsync(Visit(), r => Named(Reports(r), "{kind} {date}"))).Documents);
        var second = await _visits.IssueAsync(SerialOfTwo(), Reports);
        Assert.Equal("report 2026-05-11 R-2026-000001.pdf", first.FileName);
        Assert.True(File.Exists(Path.Combine(_visits.Out, "replaced", first.FileName)));
        Assert.Equal(["R-2026-000002.pdf"], Pdfs());
        Assert.Equal([$"replaced/{first.FileName}"], List("replaced"));
        Assert.Contains(second.Remarks, r => r.Contains("moved into replaced", StringComparison.Ordinal));
    }

    /// <summary>As a killed run leaves it: before the file got its name, and between its two names.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_run_that_was_killed_before_the_file_had_its_name_is_finished_by_the_next(bool hasBoth)
    {
        var first = Assert.Single((await _visits.IssueAsync(Visit(), r => Named(Reports(r), "{kind}"))).Documents);
        var (named, numbered) = (Path.Combine(_visits.Out, first.FileName), Path.Combine(_visits.Out, $"{first.Number}.pdf"));
        File.Copy(named, numbered);
        if (!hasBoth)
            File.Delete(named);
        await _visits.IssueAsync(Visit(), r => Named(Reports(r), "{kind}"));
        Assert.Equal([first.FileName], Pdfs());
        Assert.Equal([first.FileName], List("documents"));
    }

    [Fact]
    public async Task Another_file_of_that_name_stays_and_the_document_keeps_its_number_for_a_name()
    {
        Directory.CreateDirectory(_visits.Out);
        var taken = Path.Combine(_visits.Out, "report R-2026-000001.pdf");
        await File.WriteAllTextAsync(taken, "somebody else's", TestContext.Current.CancellationToken);
        var issued = await _visits.IssueAsync(Visit(), r => Named(Reports(r), "{kind}"));
        Assert.Equal("R-2026-000001.pdf", issued.Documents[0].FileName);
        Assert.Contains(issued.Remarks, r => r.StartsWith("R-2026-000001.pdf keeps its name", StringComparison.Ordinal));
        Assert.Equal("somebody else's", await File.ReadAllTextAsync(taken, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_name_with_the_number_of_another_document_is_a_fault()
    {
        var issued = Assert.Single((await _visits.IssueAsync(Visit(), r => Named(Reports(r), "{kind}"))).Documents);
        File.Move(Path.Combine(_visits.Out, issued.FileName), Path.Combine(_visits.Out, "report R-2026-000007.pdf"));
        var verified = Assert.Single(await VerifyAsync(["report R-2026-000007.pdf"]));
        Assert.Contains(verified.Statements, s => s is { Question: "name", Answer: Answer.Fails });
    }

    [Fact]
    public void Every_kind_has_a_word_in_every_language() =>
        Assert.All(Language.All.Where(l => l != Language.English).SelectMany(_ => DocumentTypes.All, (l, t) => (Language: l, t.Kind)), k =>
            Assert.NotEqual(k.Kind, KindPhrases.Languages.In(k.Language).Word(k.Kind), StringComparer.Ordinal)
        );

    private static IssueRequest Named(IssueRequest request, string pattern) =>
        request with
        {
            Names = FileNamePattern.Parse(pattern, out _),
        };

    private IEnumerable<string> Pdfs() => Directory.EnumerateFiles(_visits.Out, "*.pdf").Select(f => Path.GetFileName(f)).Order();

    private IEnumerable<string> List(string member) =>
        JsonNode.Parse(File.ReadAllText(Path.Combine(_visits.Out, DocumentsFile.FileName)))![member]!
            .AsArray()
            .Select(d => (string)d!["file"]!);

    private Task<IReadOnlyList<VerifiedFile>> VerifyAsync(IEnumerable<string> files) =>
        VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Files = [.. files.Select(f => Path.Combine(_visits.Out, f))],
                RegisterPath = _visits.Register,
                Now = Instant.FromUtc(2026, 6, 1, 0, 0),
                Browser = OpenBrowser.Instance,
            },
            TestContext.Current.CancellationToken
        );
}
