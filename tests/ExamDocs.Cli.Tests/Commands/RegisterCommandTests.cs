using Microsoft.Data.Sqlite;

namespace ExamDocs.Cli.Tests.Commands;

public sealed class RegisterCommandTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    public void Dispose() => _examdocs.Dispose();

    [Fact]
    public async Task Visits_are_taken_in_once_written_out_copied_and_found_sound()
    {
        var visit = Records.Small().Write(_examdocs, "visit.json");

        Assert.Contains(
            "1 visits taken in, 0 known already",
            (await _examdocs.RunAsync("register", "import", visit)).Out,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "0 visits taken in, 1 known already",
            (await _examdocs.RunAsync("register", "import", visit)).Out,
            StringComparison.Ordinal
        );
        var checkedOne = await _examdocs.RunAsync("register", "check");
        Assert.Equal(0, checkedOne.ExitCode);
        Assert.Contains("is sound: 0 documents, 1 records", checkedOne.Out, StringComparison.Ordinal);
        Assert.Equal(0, (await _examdocs.RunAsync("register", "export", "--out", "all")).ExitCode);
        Assert.True(File.Exists(_examdocs.At("all/visits/visit-000001.json")));
        Assert.Equal(0, (await _examdocs.RunAsync("register", "backup", "--out", "copy.db")).ExitCode);
        Assert.Contains(
            "1 records",
            (await _examdocs.RunAsync("register", "check", "--register", "copy.db")).Out,
            StringComparison.Ordinal
        );
        var again = await _examdocs.RunAsync("register", "backup", "--out", "copy.db");
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("is a backup of the register in use", again.Err, StringComparison.Ordinal);
        var held = await _examdocs.RunAsync("register", "purge", "--dry-run");
        Assert.Equal(0, held.ExitCode);
        Assert.Contains("Nothing was deleted", held.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_withdrawal_that_comes_in_after_a_later_visit_is_said_even_when_quiet()
    {
        var later = Records.Small();
        var visit = later["visit"]!;
        (visit["reference"], visit["examinedOn"], visit["reportedOn"]) = ("V-2026-099", "2026-07-01", "2026-07-01");
        await _examdocs.RunAsync("register", "import", later.Write(_examdocs, "later.json"));
        var earlier = await _examdocs.RunAsync("register", "import", Records.Cut().Write(_examdocs, "earlier.json"), "--quiet");
        Assert.Contains(
            "COR-11 was withdrawn on 2026-06-03 by this record, and examined again on 2026-07-01",
            earlier.Err,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(2, "--dry-run", "register", "purge")]
    [InlineData(2, "there is no register yet", "register", "check")]
    [InlineData(2, "there is no register yet", "register", "withdraw", "R-2026-000001", "--reason", "wrong")]
    [InlineData(2, "--reason", "register", "withdraw", "R-2026-000001")]
    [InlineData(2, "unreadable", "register", "import", "nowhere.json")]
    [InlineData(2, "there is no such file", "register", "check", "--checkpoint", "nowhere.json")]
    [InlineData(2, "--from register", "blank", "--out", "next.xlsx", "--due-before", "2026-11-30")]
    [InlineData(2, "is no day", "blank", "--out", "next.xlsx", "--from", "register", "--due-before", "30.11.2026")]
    [InlineData(2, "there is no register at", "blank", "--out", "next.xlsx", "--from", "register")]
    public async Task What_cannot_be_done_is_one_sentence_and_its_exit_code(int code, string sentence, params string[] arguments)
    {
        var run = await _examdocs.RunAsync(arguments);
        Assert.Equal(code, run.ExitCode);
        Assert.Contains(sentence, run.Err, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Err, StringComparison.Ordinal);
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    [Fact]
    public async Task A_register_from_the_future_is_refused_and_left_alone()
    {
        await _examdocs.RunAsync("register", "import", Records.Small().Write(_examdocs, "visit.json"));
        using (var connection = new SqliteConnection($"Data Source={_examdocs.DefaultRegister};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA user_version = 99";
            command.ExecuteNonQuery();
        }
        var before = await File.ReadAllBytesAsync(_examdocs.DefaultRegister, TestContext.Current.CancellationToken);
        var run = await _examdocs.RunAsync("issue", _examdocs.At("visit.json"), "--out", "out");
        Assert.Equal(3, run.ExitCode);
        Assert.Contains("was written by a later version", run.Err, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(_examdocs.DefaultRegister, TestContext.Current.CancellationToken));
        Assert.False(Directory.Exists(_examdocs.At("out")));
    }

    [Fact]
    public async Task A_document_that_was_taken_back_is_no_longer_valid()
    {
        var visit = Records.Small().Write(_examdocs, "visit.json");
        await _examdocs.RunAsync("issue", visit, "--out", "out", "--only", "report");
        Assert.Equal(0, (await _examdocs.RunAsync("verify", "out/R-2026-000001.pdf")).ExitCode);
        Assert.Equal(0, (await _examdocs.RunAsync("register", "withdraw", "R-2026-000001", "--reason", "sent to the wrong firm")).ExitCode);

        var verified = await _examdocs.RunAsync("verify", "out/R-2026-000001.pdf");
        Assert.Equal(1, verified.ExitCode);
        Assert.Contains("sent to the wrong firm", verified.Out, StringComparison.Ordinal);
        var twice = await _examdocs.RunAsync("register", "withdraw", "R-2026-000001", "--reason", "again");
        Assert.Equal(2, twice.ExitCode);
        Assert.Contains("was withdrawn already", twice.Err, StringComparison.Ordinal);
        Assert.Equal(0, (await _examdocs.RunAsync("register", "check", "--checkpoint", "out/checkpoint.json")).ExitCode);
        Assert.Equal(2, (await _examdocs.RunAsync("verify", "nowhere.pdf")).ExitCode);
        await DocumentsElsewhere(visit);
        await ChecksSince();
    }

    /// <summary>Moved to a folder, documents are verified, put in place, exported and backed up as before; lost ones are not.</summary>
    private async Task DocumentsElsewhere(string visit)
    {
        var kept = $"folder:{_examdocs.At("kept")}";
        Assert.Equal("database", (await _examdocs.RunAsync("register", "content")).Out.Trim());
        var moved = await _examdocs.RunAsync("register", "content", "--to", kept);
        Assert.Equal((0, $"Documents are kept at {kept}; 1 were copied there."), (moved.ExitCode, moved.Out.Trim()));
        Assert.Equal(kept, (await _examdocs.RunAsync("register", "content")).Out.Trim());
        Assert.Equal(0, (await _examdocs.RunAsync("issue", visit, "--out", "again", "--only", "report", "--reason", "withdrawn")).ExitCode);
        Assert.Equal(0, (await _examdocs.RunAsync("verify", "again/R-2026-000002.pdf")).ExitCode);
        Assert.Equal(0, (await _examdocs.RunAsync("issue", visit, "--out", "anew", "--only", "report")).ExitCode);
        Assert.True(File.Exists(_examdocs.At("anew/R-2026-000002.pdf")));
        Assert.Equal(0, (await _examdocs.RunAsync("register", "export", "--out", "all")).ExitCode);
        Assert.Equal(
            File.ReadAllBytes(_examdocs.At("again/R-2026-000002.pdf")),
            File.ReadAllBytes(_examdocs.At("all/documents/R-2026-000002.pdf"))
        );
        Assert.Equal(0, (await _examdocs.RunAsync("register", "backup", "--out", "copy.db")).ExitCode);
        Assert.Equal(3, (await _examdocs.RunAsync("register", "content", "--to", "s3://bucket?secret=abc")).ExitCode);
        foreach (var file in Directory.GetFiles(_examdocs.At("kept"), "*", SearchOption.AllDirectories).Where(f => f.Length > 60))
            File.AppendAllText(file, "x");
        var lost = await _examdocs.RunAsync("register", "export", "--out", "lost");
        Assert.Equal(3, lost.ExitCode);
        Assert.Contains($"as it was issued. {kept} has other bytes under", lost.Err, StringComparison.Ordinal);
        var refused = await _examdocs.RunAsync("register", "content", "--to", "database");
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("R-2026-000002", refused.Out, StringComparison.Ordinal);
        foreach (var file in Directory.GetFiles(_examdocs.At("kept"), "*", SearchOption.AllDirectories).Where(f => f.Length > 60))
            File.WriteAllBytes(file, File.ReadAllBytes(file)[..^1]);
        Assert.Equal(0, (await _examdocs.RunAsync("register", "content", "--to", "database")).ExitCode);
    }

    private async Task ChecksSince()
    {
        var all = await _examdocs.RunAsync("register", "check", "--save", "checked.json", "--json", "found.json");
        Assert.Equal(0, all.ExitCode);
        Assert.DoesNotContain("Not looked at again", all.Out, StringComparison.Ordinal);
        Assert.Contains("\"sound\": true", File.ReadAllText(_examdocs.At("found.json")), StringComparison.Ordinal);
        var some = await _examdocs.RunAsync("register", "check", "--since", "checked.json");
        Assert.Equal(0, some.ExitCode);
        Assert.Contains("Not looked at again were the rows, documents and outcomes of the first ", some.Out, StringComparison.Ordinal);
        var other = await _examdocs.RunAsync("register", "check", "--since", "out/checkpoint.json");
        Assert.Equal(2, other.ExitCode);
        Assert.Contains("its format is not examdocs-checked/1", other.Err, StringComparison.Ordinal);
    }
}
