namespace ExamDocs.Cli.Tests.Commands;

/// <summary>Which register is used: a mistyped name never starts numbering anew, and nothing is made where nothing is issued.</summary>
public sealed class RegisterPlaceTests : IDisposable
{
    private readonly Examdocs _examdocs = new();

    public void Dispose() => _examdocs.Dispose();

    [Theory]
    [InlineData("issue", "visit.json", "--out", "out")]
    [InlineData("label", "visit.json", "--out", "labels.pdf")]
    [InlineData("check", "visit.json")]
    [InlineData("blank", "--from", "visit.json", "--out", "sheets.pdf")]
    [InlineData("register", "import", "visit.json")]
    [InlineData("register", "check")]
    [InlineData("register", "export", "--out", "all")]
    [InlineData("register", "backup", "--out", "copy.db")]
    [InlineData("register", "merge", "visit.json")]
    [InlineData("register", "where")]
    [InlineData("register", "purge", "--dry-run")]
    public async Task A_register_that_was_named_and_is_not_there_is_2_and_nothing_is_made(params string[] arguments)
    {
        Records.Small().Write(_examdocs, "visit.json");
        var run = await _examdocs.RunAsync([.. arguments, "--register", "mistyped.db"]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("no register at mistyped.db, which --register names", run.Err, StringComparison.Ordinal);
        Assert.Contains("examdocs register create --register mistyped.db", run.Err, StringComparison.Ordinal);
        Assert.Equal(["visit.json"], _examdocs.Files());
        Assert.Empty(Directory.GetFiles(_examdocs.Data, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task The_usual_one_is_made_with_a_sentence_and_used_from_any_folder()
    {
        Records.Small().Write(_examdocs, "visit.json");
        Directory.CreateDirectory(_examdocs.At("other"));
        var first = await _examdocs.RunAsync("issue", "visit.json", "--out", "out", "--only", "due-label");
        Assert.Contains($"A register was made at {_examdocs.DefaultRegister}: numbering starts there", first.Err, StringComparison.Ordinal);
        var second = await _examdocs.RunAsync("issue", "visit.json", "--out", "other/out", "--only", "due-label");
        Assert.DoesNotContain("was made", second.Err, StringComparison.Ordinal);
        var where = await _examdocs.RunAsync("register", "where");
        Assert.Equal(0, where.ExitCode);
        Assert.StartsWith(_examdocs.DefaultRegister, where.Out, StringComparison.Ordinal);
        Assert.Contains("kept since", where.Out, StringComparison.Ordinal);
    }

    /// <summary>The one item is fit, and no notice is called for.</summary>
    [Fact]
    public async Task A_run_that_issues_nothing_makes_no_register()
    {
        Records.Small().Write(_examdocs, "visit.json");
        Assert.Equal(0, (await _examdocs.RunAsync("issue", "visit.json", "--out", "out", "--only", "notice")).ExitCode);
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    [Fact]
    public async Task What_cannot_be_read_makes_no_register()
    {
        File.WriteAllText(_examdocs.At("torn.json"), "{");
        Assert.Equal(2, (await _examdocs.RunAsync("issue", "torn.json", "--out", "out")).ExitCode);
        Assert.Equal(2, (await _examdocs.RunAsync("label", "torn.json", "--out", "labels.pdf")).ExitCode);
        Assert.Equal(2, (await _examdocs.RunAsync("label", "Q-2026-000001", "--out", "labels.pdf")).ExitCode);
        Assert.Equal(2, (await _examdocs.RunAsync("register", "import", "torn.json")).ExitCode);
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    [Fact]
    public async Task Where_none_is_yet_it_says_where_one_will_be()
    {
        var where = await _examdocs.RunAsync("register", "where");
        Assert.Equal(0, where.ExitCode);
        Assert.Contains(_examdocs.DefaultRegister, where.Out, StringComparison.Ordinal);
        Assert.Contains("there is no register yet", where.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(_examdocs.DefaultRegister));
    }

    [Fact]
    public async Task Create_makes_one_and_leaves_another_alone()
    {
        var made = await _examdocs.RunAsync("register", "create", "--register", "kit/firm.db");
        Assert.Equal(0, made.ExitCode);
        var before = File.ReadAllBytes(_examdocs.At("kit/firm.db"));
        var again = await _examdocs.RunAsync("register", "create", "--register", "kit/firm.db");
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("already; it was left as it is", again.Err, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_examdocs.At("kit/firm.db")));
    }

    [Theory]
    [InlineData("examdocs.db")]
    [InlineData("out/examdocs.db")]
    public async Task One_that_lies_in_a_folder_worked_in_and_is_not_used_is_named(string stray)
    {
        Records.Small().Write(_examdocs, "visit.json");
        Assert.Equal(0, (await _examdocs.RunAsync("register", "create", "--register", stray)).ExitCode);
        var run = await _examdocs.RunAsync("issue", "visit.json", "--out", "out", "--only", "due-label");
        Assert.Contains(
            $"{_examdocs.At(stray)} is not the register in use, which is {_examdocs.DefaultRegister}",
            run.Err,
            StringComparison.Ordinal
        );
        Assert.Contains("examdocs register merge", run.Err, StringComparison.Ordinal);
        var used = await _examdocs.RunAsync("issue", "visit.json", "--out", "out", "--only", "due-label", "--register", stray);
        Assert.DoesNotContain("is not the register in use", used.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_asks_the_register_that_issue_uses_and_never_writes_it()
    {
        var cut = Records.Cut();
        cut["visit"]!["reference"] = "V-1";
        cut.Write(_examdocs, "cut.json");
        await _examdocs.RunAsync("issue", "cut.json", "--out", "out", "--only", "quarantine-label");
        var before = File.ReadAllBytes(_examdocs.DefaultRegister);
        var next = Records.Small();
        next["visit"]!["reference"] = "V-2";
        next.Write(_examdocs, "next.json");
        var run = await _examdocs.RunAsync("check", "next.json");
        Assert.Contains("1 withdraw", run.Out, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_examdocs.DefaultRegister));
        Assert.Equal([_examdocs.DefaultRegister], Directory.GetFiles(Path.GetDirectoryName(_examdocs.DefaultRegister)!));
    }

    [Fact]
    public async Task Another_is_joined_once_and_left_as_it_is()
    {
        Records.Cut().Write(_examdocs, "visit.json");
        await _examdocs.RunAsync("register", "create", "--register", "other.db");
        await _examdocs.RunAsync("register", "import", "visit.json", "--register", "other.db");
        await _examdocs.RunAsync("register", "create");
        var other = File.ReadAllBytes(_examdocs.At("other.db"));
        var first = await _examdocs.RunAsync("register", "merge", "other.db");
        var second = await _examdocs.RunAsync("register", "merge", "other.db");
        var itself = await _examdocs.RunAsync("register", "merge", _examdocs.DefaultRegister);
        Assert.Equal((0, 0, 0), (first.ExitCode, second.ExitCode, itself.ExitCode));
        Assert.Contains("1 visits and 0 documents taken in, 0 known already, 0 refused", first.Out, StringComparison.Ordinal);
        Assert.Contains("0 visits and 0 documents taken in, 1 known already, 0 refused", second.Out, StringComparison.Ordinal);
        Assert.Contains("0 visits and 0 documents taken in, 1 known already, 0 refused", itself.Out, StringComparison.Ordinal);
        Assert.Equal(other, File.ReadAllBytes(_examdocs.At("other.db")));
        Assert.Contains("is sound: 0 documents, 1 records", (await _examdocs.RunAsync("register", "check")).Out, StringComparison.Ordinal);
        Assert.Equal(2, (await _examdocs.RunAsync("register", "merge", "none.db")).ExitCode);
    }

    [Fact]
    public async Task Backup_and_check_remind_of_a_checkpoint_kept_elsewhere()
    {
        await _examdocs.RunAsync("register", "import", Records.Small().Write(_examdocs, "visit.json"));
        Assert.Contains(
            "only a backup and a checkpoint.json kept elsewhere show it",
            (await _examdocs.RunAsync("register", "backup", "--out", "copy.db")).Out,
            StringComparison.Ordinal
        );
        Assert.Contains("No checkpoint was given.", (await _examdocs.RunAsync("register", "check")).Out, StringComparison.Ordinal);
        await _examdocs.RunAsync("register", "export", "--out", "all");
        Assert.DoesNotContain(
            "No checkpoint",
            (await _examdocs.RunAsync("register", "check", "--checkpoint", "all/checkpoint.json")).Out,
            StringComparison.Ordinal
        );
    }
}
