using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company.Packing;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Tests.SeededYears;
using NodaTime;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>
/// The pack of the invented firm after its three years: the documents of its last round are printed as they are for users; by default the
/// reports alone, with EXAMDOCS_PROOF=full every label and notice too.
/// </summary>
public sealed class SeededPackTests(SeededRegister seeded) : IDisposable
{
    private readonly Workspace _workspace = new();

    public void Dispose() => _workspace.Dispose();

    [Fact]
    public async Task Every_item_of_the_firm_is_in_it_with_its_report_and_what_is_missing_is_named()
    {
        var visits = SeededFirm.Of(1);
        var last = await RecordedAsync();
        var asked = new PackQuestion(visits[0].Visit.Employer!.Name!, last.PlusDays(10), last.PlusDays(10));
        var zip = Path.Combine(_workspace.Folder, "pack.zip");
        var request = new PackRequest(_workspace.Register, asked, zip) { Browser = OpenBrowser.Instance };

        var result = await BuildPack.RunAsync(request, TestContext.Current.CancellationToken);

        Assert.True(result.HasCopy, result.Failure);
        Assert.Empty(Bag.Faults(await File.ReadAllBytesAsync(zip, TestContext.Current.CancellationToken)));
        Assert.Null(Pdf.Objection(request.CopyFile));
        var pack = result.Contents!;
        Assert.InRange(pack.Items.Count(i => i.IsInService), 350, 450);
        Assert.All(pack.Items.Where(i => i.IsInService), i => Assert.Contains(i.Documents, d => d.StartsWith('R')));
        // Nobody recorded what became of withdrawn kit, nor enclosed anything about the examiners; everything else is in order.
        var codes = pack.Gaps.Select(g => g.Code).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(["no-competence-evidence", "no-document-in-date", "no-quarantine-record"], codes.Order(StringComparer.Ordinal));
        Assert.Equal(2, pack.Gaps.Count(g => g.Code is "no-competence-evidence"));
        var notInService = pack.Items.Where(i => !i.IsInService).Select(i => i.Item.Id).ToHashSet(StringComparer.Ordinal);
        Assert.All(pack.Gaps.Where(g => g.Code is not "no-competence-evidence"), g => Assert.Contains(g.About, notInService));
        using var read = PdfDocument.Open(request.CopyFile);
        Assert.True(read.TryGetBookmarks(out var bookmarks));
        var places = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().ToLookup(b => b.Title.Split(' ')[0], b => b.PageNumber);
        // All of the pack's own pages in front are numbered apart.
        var front = Assert.Single(pack.Documents.Select(d => places[d.Number].Single() - d.Page!.Value).Distinct());
        Assert.True(front >= 3);
        foreach (var document in pack.Documents)
            Assert.Contains(document.Number, read.GetPage(front + document.Page!.Value).Text, StringComparison.Ordinal);
    }

    private async Task<LocalDate> RecordedAsync()
    {
        var last = default(LocalDate);
        File.Copy(seeded.PlaceBeforeLastRound, _workspace.Register, overwrite: true);
        foreach (var (visit, file) in SeededFirm.Of(1).Zip(SeededFirm.Write(1, Path.Combine(_workspace.Folder, "visits"))))
        {
            if (!SeededFirm.IsOfLastRound(visit))
                continue;
            last = visit.Visit.ExaminedOn!.Value.PlusDays(1);
            await IssueDocuments.RunAsync(
                _workspace.Request(file) with
                {
                    Today = last,
                    Only = Effort.IsFull ? [] : ["report"],
                },
                TestContext.Current.CancellationToken
            );
        }
        return last;
    }
}
