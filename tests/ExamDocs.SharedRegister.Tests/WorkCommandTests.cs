using System.Globalization;
using ExamDocs.Cli.Tests;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;
using ExamDocs.Register.Work;
using NodaTime;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>The program as a worker: what was put on the list is issued as <c>issue</c> does it, once; what cannot be is said.</summary>
public sealed class WorkCommandTests : WorkplaceOfWork
{
    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task What_was_put_on_the_list_is_issued_as_issue_does_it_and_asked_for_again_it_was_issued_before()
    {
        Work().Dispose();
        var record = Records.Small();
        record["examinations"]![0]!["observations"]![0]!["photo"] = "photos/tag.png";
        var visit = record.Write(_examdocs, "visit.json");
        WritePhoto("photos/tag.png");
        File.WriteAllText(_examdocs.At("head.json"), """{ "name": "Oakhollow Examinations", "logo": "photos/tag.png" }""");
        string[] style = ["--letterhead", "head.json", "--language", "de", "--register", Database];

        var enqueued = await _examdocs.RunAsync(["work", "enqueue", visit, .. style]);
        Assert.Equal((0, "job 1"), (enqueued.ExitCode, enqueued.Out.TrimEnd().Split('\n')[^1]));
        Assert.Contains("waits", (await List()).Out, StringComparison.Ordinal);
        File.Delete(_examdocs.At("photos/tag.png"));
        var worked = await WorkUntilEmpty();
        Assert.True(worked.ExitCode == 0, worked.Out + worked.Err);
        using (var register = DocumentRegister.OpenToRead(Database))
        {
            Assert.Equal(["due-label", "report"], register.Documents().Select(d => d.Kind).Distinct().Order());
            Assert.All(register.Documents(), d => Assert.Equal("", d.Folder));
            Assert.Empty(register.Check());
        }

        WritePhoto("photos/tag.png");
        var issued = await _examdocs.RunAsync(["issue", visit, "--out", "out", .. style]);
        Assert.Equal(0, issued.ExitCode);
        var listed = Lines(issued.Out)
            .Where(l => l.StartsWith("R-2026-", StringComparison.Ordinal) || l.StartsWith("D-2026-", StringComparison.Ordinal));
        Assert.Equal(2, listed.Count());
        Assert.All(listed, line => Assert.EndsWith("(früher ausgestellt)", line, StringComparison.Ordinal));
        await _examdocs.RunAsync(["work", "enqueue", visit, .. style]);
        await WorkUntilEmpty();
        Assert.Matches("job 2  is done: ([0-9]+) documents, \\1 of them issued before", (await List()).Out);
    }

    [Fact]
    public async Task What_cannot_be_issued_is_refused_with_its_reason_is_not_tried_again_and_keeps_no_other_waiting()
    {
        using var work = Work();
        const string options = """{"inputs":["inputs/0/visit.json"],"language":"en","only":"due-label"}""";
        var today = LocalDate.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        var small = System.Text.Encoding.UTF8.GetBytes(Records.Small().ToJsonString());
        JobToEnqueue Job(string how, LocalDate day, params JobFile[] files) => new("poison", how, day) { Files = files };
        JobFile input = new("inputs/0/visit.json", small);
        (JobToEnqueue Job, string Why)[] poison =
        [
            (Job(options, today, new JobFile("inputs/0/visit.json", "{"u8.ToArray())), "inputs/0/visit.json: "),
            (Job(options, today, new JobFile("../visit.json", small)), "leads elsewhere"),
            (Job(options, today, new JobFile("/tmp/visit.json", small)), "leads elsewhere"),
            (Job(options, today, input, input), "two of its files"),
            (Job(options.Replace("inputs/0", "..", StringComparison.Ordinal), today, input), "not said in a way"),
            (Job(options.Replace("\"only\"", "\"sign\"", StringComparison.Ordinal), today, input), "not said in a way"),
            (Job("no JSON", today, input), "not said in a way"),
            (Job(options, today.PlusDays(-60), input), "more than 31 days ago"),
            (Job(options, today.PlusDays(3), input), "in the future"),
            (Job(options.Replace("\"only\"", "\"rules\":\"rules\",\"only\"", StringComparison.Ordinal), today, input), "no such folder"),
        ];
        foreach (var (job, _) in poison)
            work.Enqueue(job);
        var good = work.Enqueue(Job(options, today, input));
        var worked = await WorkUntilEmpty();
        Assert.Equal(1, worked.ExitCode);
        Assert.Equal(JobState.Done, work.Listed(good)!.State);
        Assert.Equal(1, work.Listed(good)!.Documents);
        Assert.All(poison.Index(), p =>
        {
            var listed = work.Listed(p.Index + 1)!;
            Assert.Equal(JobState.Refused, listed.State);
            Assert.Contains(p.Item.Why, Assert.Single(listed.Said), StringComparison.Ordinal);
            Assert.DoesNotContain("examdocs-work-", listed.Said[0], StringComparison.Ordinal);
        });
        Assert.Equal(2, (await _examdocs.RunAsync("work", "retry", "1", "--register", Database)).ExitCode);
        Assert.Empty(Directory.EnumerateDirectories(Path.GetTempPath(), $"examdocs-work-{Environment.ProcessId}-*"));
    }

    [Fact]
    public async Task A_version_recorded_after_the_job_was_asked_for_is_not_overtaken_and_one_asked_for_before_is_corrected()
    {
        Work().Dispose();
        var (small, cut) = (Records.Small().Write(_examdocs, "small.json"), Records.Cut().Write(_examdocs, "cut.json"));
        await Enqueue(small, "--only", "due-label");
        await _examdocs.RunAsync("register", "import", cut, "--register", Database);
        await Enqueue(cut, "--only", "quarantine-label");
        await Enqueue(small, "--only", "due-label");
        await Enqueue(cut, "--only", "quarantine-label");
        var worked = await WorkUntilEmpty();
        Assert.Equal(1, worked.ExitCode);
        var said = (await List()).Out;
        Assert.Matches("job 1  was refused .*\\n  another version of V-2026-044 was recorded after this job was asked for", said);
        Assert.Matches("job 2  is done: 1 documents  ", said);
        Assert.Matches("job 3  is done: 0 documents", said);
        Assert.Matches("job 4  is done: 1 documents, 1 of them issued before", said);
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Equal("quarantine-label", Assert.Single(register.Documents()).Kind);
        Assert.Empty(register.Check());
    }

    /// <summary>A reference is compared as everywhere else: capitals and blanks make no other visit of it.</summary>
    [Fact]
    public async Task A_version_recorded_meanwhile_is_not_overtaken_where_its_reference_is_spelt_otherwise()
    {
        Work().Dispose();
        var held = Records.Small();
        var observations = held["examinations"]![0]!["observations"]!.AsArray();
        observations.Remove(Records.Observation(held, "core-feel"));
        held["visit"]!["reference"] = "v 2026-044";
        await Enqueue(Records.Small().Write(_examdocs, "small.json"));
        await _examdocs.RunAsync("register", "import", held.Write(_examdocs, "held.json"), "--register", Database);
        await WorkUntilEmpty();
        Assert.Matches("job 1  was refused", (await List()).Out);
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.Empty(register.Documents());
        Assert.Equal(1, register.Visits.Latest);
    }

    /// <summary>What a job says of its visits is taken for hostile like its files: the register knows what was decided.</summary>
    [Theory]
    [InlineData("visits = '{2}', seen = 0")]
    [InlineData("visits = '{1}', seen = 0")]
    [InlineData("visits = '{2}', seen = 1")]
    public async Task A_job_that_says_it_was_decided_before_the_withdrawal_is_not_believed(string said)
    {
        using var work = Work();
        var again = Records.Small();
        var visit = again["visit"]!;
        (visit["reference"], visit["examinedOn"], visit["reportedOn"]) = ("V-2026-099", "2026-06-25", "2026-06-25");
        var withdrawn = Records.Cut().Write(_examdocs, "cut.json");
        var fit = again.Write(_examdocs, "again.json");
        await _examdocs.RunAsync("register", "import", withdrawn, fit, "--register", Database);
        await Enqueue(fit);
        using (var connection = Connect())
        {
            connection.Execute(
                $"UPDATE examdocs_work.job SET state = 'decided', version = NULL, visit_order = '{{0}}', {said} WHERE number = 1"
            );
            connection.Execute("UPDATE examdocs_work.part SET state = 'done'");
            connection.Execute(
                "INSERT INTO examdocs_work.part (job, stage, slice, slices) VALUES (1, 1, 0, 1), (1, 2, 0, 1), (1, 3, 0, 1), (1, 4, 0, 1)"
            );
        }
        await WorkUntilEmpty();
        using var register = DocumentRegister.OpenToRead(Database);
        Assert.DoesNotContain(register.Documents(), d => d.Kind is "report" or "due-label");
    }

    [Fact]
    public async Task What_is_wrong_with_the_command_is_said_in_plain_words()
    {
        var visit = Records.Small().Write(_examdocs, "visit.json");
        async Task Refused(int code, string why, params string[] arguments)
        {
            var run = await _examdocs.RunAsync(["work", .. arguments]);
            Assert.Equal(code, run.ExitCode);
            Assert.Contains(why, run.Err, StringComparison.Ordinal);
        }
        await Refused(2, "holds nobody's key", "enqueue", visit, "--sign", "key.p12", "--register", Database);
        Open().Dispose();
        await Refused(3, "register update", "enqueue", visit, "--register", Database);
        Assert.Equal(0, (await _examdocs.RunAsync("register", "update", "--register", Database)).ExitCode);
        await Refused(2, "there is no job 7", "cancel", "7", "--register", Database);
        await Refused(2, "there is no job 7", "list", "7", "--register", Database);
        await Refused(3, "is a file", "list", "--register", await FileRegister());
        File.WriteAllText(_examdocs.At("visit.json"), "{");
        await Refused(2, "inputs/0/visit.json: ", "enqueue", visit, "--register", Database);
        Assert.Equal("0 jobs\n", (await List()).Out);
    }

    private async Task<string> FileRegister()
    {
        await _examdocs.RunAsync("register", "create", "--register", "kit.db");
        return "kit.db";
    }

    private Task<Run> Enqueue(params string[] arguments) => _examdocs.RunAsync(["work", "enqueue", .. arguments, "--register", Database]);

    private Task<Run> WorkUntilEmpty() => _examdocs.RunAsync("work", "--until-empty", "--register", Database);

    private Task<Run> List() => _examdocs.RunAsync("work", "list", "--register", Database);

    private static string[] Lines(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>A picture of the gallery: any will do that is large enough for a logo.</summary>
    private void WritePhoto(string name)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(_examdocs.At(name))!);
        var root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Records.ExampleJson)!, ".."));
        File.Copy(Path.Combine(root, "docs", "gallery", "quarantine-label.png"), _examdocs.At(name));
    }

    protected override void Dispose(bool disposing)
    {
        _examdocs.Dispose();
        base.Dispose(disposing);
    }
}
