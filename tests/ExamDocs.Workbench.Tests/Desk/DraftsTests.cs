using ExamDocs.UseCases.Recording;
using ExamDocs.UseCases.Registered;
using ExamDocs.Workbench.Desk;

namespace ExamDocs.Workbench.Tests.Desk;

/// <summary>A draft on the desk is saved whole, by one page at a time, and each save is noticed.</summary>
public sealed class DraftsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("drafts-");
    private readonly DeskVisit _visit;

    public DraftsTests()
    {
        _visit = new DeskVisit("a", _folder.FullName);
        var round = _folder.CreateSubdirectory("round-1").FullName;
        var items = string.Join(',', Enumerable.Range(0, 40).Select(n => $$"""{"id":"C-{{n}}","category":"connector"}"""));
        File.WriteAllText(
            Path.Combine(round, DeskVisit.DraftName),
            $$"""{"format":"examdocs/1","visit":{},"items":[{{items}}],"examinations":[]}"""
        );
    }

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Many_pages_of_two_programs_lose_nothing_of_each_other()
    {
        Drafts[] programs = [new(), new()];
        Parallel.For(0, 40, n => Answer(programs[n / 2 % 2], n, n % 2 == 0 ? "clear" : "doubt"));
        var draft = Drafts.Of(_visit)!;
        Assert.Equal(
            Enumerable.Range(0, 40).Select(n => n % 2 == 0 ? "clear" : "doubt"),
            Enumerable.Range(0, 40).Select(n => new ItemFields(n).Value(draft, "answer/cracks")),
            StringComparer.Ordinal
        );
        Assert.Equal([DeskVisit.DraftName], Directory.EnumerateFiles(Path.Combine(_folder.FullName, "round-1")).Select(Path.GetFileName));
    }

    [Fact]
    public void The_visit_that_was_typed_in_last_is_the_first_on_the_desk()
    {
        var desk = new DeskFolder(
            new WorkbenchRequest
            {
                Register = new RegisterPlace("none", null),
                DataFolder = Path.Combine(_folder.FullName, "data"),
                Today = () => OpenedWorkbench.Today,
            }
        );
        foreach (var (id, typed) in new[] { ("aa", 9), ("bb", 12), ("cc", 10) })
        {
            var visit = Directory.CreateDirectory(Path.Combine(_folder.FullName, "data", "desk", id));
            var draft = Path.Combine(visit.CreateSubdirectory("round-1").FullName, DeskVisit.DraftName);
            File.WriteAllText(draft, """{"format":"examdocs/1","visit":{}}""");
            File.SetLastWriteTimeUtc(draft, new DateTime(2026, 5, 12, typed, 0, 0, DateTimeKind.Utc));
        }
        Assert.Equal(["bb", "cc", "aa"], desk.Visits.Select(v => v.Id));
    }

    [Fact]
    public void A_save_of_the_same_length_is_noticed_by_what_was_checked_or_issued_before()
    {
        var drafts = new Drafts();
        Answer(drafts, 0, "clear");
        var stamp = _visit.Stamp;
        using var run = IssueRuns.New(_visit);
        Assert.False(run.IsOutdated);
        Answer(drafts, 0, "doubt");
        Assert.NotEqual(stamp, _visit.Stamp);
        Assert.True(run.IsOutdated);
    }

    [Fact]
    public void Nothing_but_a_draft_is_written_over()
    {
        var path = _visit.Draft!;
        var draft = DraftFile.Read(path);
        File.WriteAllText(path, "a letter");
        Assert.ThrowsAny<Exception>(() => DraftFile.Write(path, draft));
        Assert.Equal("a letter", File.ReadAllText(path));
    }

    private void Answer(Drafts drafts, int item, string state)
    {
        var name = "answer/cracks";
        var fields = new ItemFields(item);
        var notSaved = drafts.Change(_visit, d => fields.Save(d, [new TypedField(name, fields.Value(d, name), state)]));
        Assert.Empty(notSaved);
    }
}
