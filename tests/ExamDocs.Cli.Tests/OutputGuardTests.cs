namespace ExamDocs.Cli.Tests;

/// <summary>
/// Every command's every output, onto everything that may have its name: nothing is overwritten, nothing else is written either, and one
/// sentence says what to do.
/// </summary>
public sealed class OutputGuardTests(Taken taken) : IClassFixture<Taken>
{
    /// <summary>Each with its input, and {0} where the output is named.</summary>
    private static readonly (string Input, string Line)[] Outputs =
    [
        ("visit.json", "check visit.json --json {0}"),
        ("visit.xlsx", "check visit.xlsx --annotate {0}"),
        ("visit.json", "blank --from visit.json --out {0}"),
        ("visit.json", "label visit.json --out {0}"),
        ("renamed.pdf", "verify renamed.pdf --json {0}"),
        ("", "register backup --out {0}"),
    ];

    public static TheoryData<string, string, string> NeverReplaced
    {
        get
        {
            TheoryData<string, string, string> all = [];
            foreach (var (input, line) in Outputs)
            {
                foreach (var (name, word) in Taken.Precious)
                {
                    if (name != input)
                        all.Add(line, name, word);
                }
                if (input.Length > 0)
                    all.Add(line, input, "an input of this run");
            }
            return all;
        }
    }

    public static TheoryData<string, string> Replaced => [.. from output in Outputs from name in Taken.Ordinary select (output.Line, name)];

    [Theory]
    [MemberData(nameof(NeverReplaced))]
    public async Task What_is_precious_stays_also_where_it_is_to_be_replaced(string line, string name, string word)
    {
        name = name.StartsWith("R-", StringComparison.Ordinal) ? Path.GetFileName(taken.Report) : name;
        foreach (var named in new[] { name, $"./folder/../{name}", taken.Examdocs.At(name), taken.LinkTo(name) })
        {
            // Without --replace it is enough to say that the name is taken, where that is all there is to say.
            await AssertRefused(line, named, word is "is read-only" ? "is there already" : word);
            await AssertRefused($"{line} --replace", named, word);
        }
    }

    [Theory]
    [MemberData(nameof(Replaced))]
    public async Task An_ordinary_file_gives_way_only_where_that_is_asked_for(string line, string name)
    {
        taken.Renew(name);
        await AssertRefused(line, name, "is there already: name another file, or add --replace");
        var run = await RunAsync($"{line} --replace", name);

        Assert.True(run.ExitCode is 0 or 1, run.Err);
        var written = await File.ReadAllBytesAsync(taken.Examdocs.At(name), TestContext.Current.CancellationToken);
        taken.Renew(name);
        Assert.NotEqual(await File.ReadAllBytesAsync(taken.Examdocs.At(name), TestContext.Current.CancellationToken), written);
    }

    /// <summary>The link is replaced; what it leads to stays as it is.</summary>
    [Fact]
    public async Task A_link_to_an_ordinary_file_gives_way_and_the_file_stays()
    {
        taken.Renew("note.txt");
        var link = taken.LinkTo("note.txt");
        await AssertRefused("check visit.json --json {0}", link, "is there already");
        var before = await File.ReadAllTextAsync(taken.Examdocs.At("note.txt"), TestContext.Current.CancellationToken);

        Assert.Equal(0, (await RunAsync("check visit.json --json {0} --replace", link)).ExitCode);
        Assert.Equal(before, await File.ReadAllTextAsync(taken.Examdocs.At("note.txt"), TestContext.Current.CancellationToken));
        Assert.Null(new FileInfo(taken.Examdocs.At(link)).LinkTarget);
    }

    [Fact]
    public async Task A_link_to_nothing_is_a_name_that_is_taken()
    {
        var link = taken.LinkTo("nowhere.json");
        await AssertRefused("check visit.json --json {0}", link, "is there already");
        File.Delete(taken.Examdocs.At(link));
    }

    /// <summary>A hard link is the file under another name, and a copy is not told from it.</summary>
    [Theory]
    [InlineData("check visit.json --json {0} --replace", "visit.json")]
    [InlineData("check visit.xlsx --annotate {0} --replace", "visit.xlsx")]
    public async Task An_input_under_another_name_is_an_input(string line, string input)
    {
        File.Copy(taken.Examdocs.At(input), taken.Examdocs.At("twin"));
        await AssertRefused(line, "twin", $"is an input of this run, {input}, or a copy of it");
        File.Delete(taken.Examdocs.At("twin"));
    }

    [Theory]
    [InlineData("label visit.json --stock stock.json --out {0} --replace", "stock.json")]
    [InlineData("blank --out {0} --rules rules --replace", "rules/headings.json")]
    [InlineData("verify renamed.pdf --trust trust.pem --json {0} --replace", "trust.pem")]
    [InlineData("check csv --json {0} --replace", "csv/items.csv")]
    [InlineData("register backup --out {0} --register other.db --replace", "other.db")]
    public async Task Whatever_a_run_reads_is_an_input(string line, string input)
    {
        Directory.CreateDirectory(taken.Examdocs.At("rules"));
        Directory.CreateDirectory(taken.Examdocs.At("csv"));
        foreach (var (name, text) in Read)
            await File.WriteAllTextAsync(taken.Examdocs.At(name), text, TestContext.Current.CancellationToken);
        await AssertRefused(line, input, "name another file");
    }

    [Theory]
    [InlineData("a.xlsx", "a.xlsx")]
    [InlineData("a.xlsx", "./a.xlsx")]
    [InlineData("a.xlsx", "folder/../a.xlsx")]
    [InlineData("folder/a.xlsx", "here/a.xlsx")]
    public async Task Two_outputs_of_one_run_need_two_names(string one, string other)
    {
        File.Delete(taken.Examdocs.At("here"));
        File.CreateSymbolicLink(taken.Examdocs.At("here"), "folder");
        await AssertRefused($"check visit.xlsx --json {one} --annotate {{0}} --replace", other, "is named for two outputs of this run");
    }

    [Fact]
    public async Task Devices_go_on_working()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no /dev/null here.");
        Assert.Equal(0, (await RunAsync("check visit.json --json {0}", "/dev/null")).ExitCode);
        Assert.True(File.Exists("/dev/null"));
        Assert.Equal(2, (await RunAsync("register backup --out {0}", "/dev/null")).ExitCode);
    }

    /// <summary>What cannot be written to is named as it was typed, before anything is done.</summary>
    [Theory]
    [InlineData("note.txt/f.json", "note.txt is a file, and a folder is needed there")]
    [InlineData("note.txt/sub/f.json", "the folder note.txt/sub cannot be made: note.txt is a file")]
    [InlineData("/sys/f.json", "the folder /sys cannot be written to: name another folder")]
    [InlineData("/sys/sub/f.json", "the folder /sys/sub is not there and cannot be made")]
    [InlineData("sub/", "sub/ names a folder: name a file")]
    public async Task A_folder_that_cannot_be_written_to_is_named_as_typed(string file, string said)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "There is no /sys here.");
        foreach (var (_, line) in Outputs)
            await AssertRefused(line, file, said);
    }

    /// <summary>Folders that are written into; {0} is the folder.</summary>
    [Theory]
    [InlineData("issue visit.json --out {0}", "note.txt", "note.txt is a file, and a folder is needed there: name another folder")]
    [InlineData("register export --out {0}", "note.txt", "note.txt is a file, and a folder is needed there: name another folder")]
    [InlineData("issue visit.json --out {0}", "/sys", "the folder /sys cannot be written to: name another folder")]
    [InlineData("register export --out {0}", "/sys/sub", "the folder /sys/sub is not there and cannot be made: name another folder")]
    [InlineData("issue visit.json --out {0}", "full", "full/documents.json is not a list of documents of this register: move it away")]
    [InlineData("register export --out {0}", "full", "full/register.json is not a list of this register: move it away")]
    [InlineData("register export --out {0}", "edited", "edited/visits/visit-000001.json is not the record of that number")]
    [InlineData("issue visit.json --out {0} --register other.db", "out", "out/documents.json is not a list of documents of this register")]
    public async Task A_folder_with_something_else_in_it_is_left_as_it_is(string line, string folder, string said)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "There is no /sys here.");
        foreach (var file in new[] { "full/documents.json", "full/register.json", "edited/visits/visit-000001.json" })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(taken.Examdocs.At(file))!);
            await File.WriteAllTextAsync(taken.Examdocs.At(file), "{}", TestContext.Current.CancellationToken);
        }
        await AssertRefused(line, folder, said);
    }

    [Fact]
    public async Task What_is_ours_in_a_folder_is_brought_up_to_date()
    {
        Assert.Equal(0, (await RunAsync("issue visit.json --out {0}", "out")).ExitCode);
        Assert.Equal(0, (await RunAsync("register export --out {0}", "all")).ExitCode);
        Assert.Equal(0, (await RunAsync("register export --out {0}", "all")).ExitCode);
    }

    private static readonly (string Name, string Text)[] Read =
    [
        ("rules/headings.json", """{"serial":["Number on the plate"]}"""),
        ("trust.pem", "no key"),
        ("csv/items.csv", "id,category"),
        (
            "stock.json",
            """
            {"name":"mine","what":"a roll","pageWidthMm":110,"pageHeightMm":160,"labelWidthMm":100,"labelHeightMm":150,"leftMm":5,"topMm":5}
            """
        ),
    ];

    private async Task AssertRefused(string line, string named, string word)
    {
        var before = taken.Snapshot();
        var run = await RunAsync(line, named);

        Assert.True(run.ExitCode == 2, $"{line} {named}: {run.ExitCode} {run.Out}{run.Err}");
        Assert.Empty(run.Out);
        var said = Assert.Single(run.Err.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(named.TrimEnd('/').Split("/f.json")[0], said, StringComparison.Ordinal);
        Assert.Contains(word, said, StringComparison.Ordinal);
        Assert.Contains(": ", said, StringComparison.Ordinal);
        Assert.Equal(before, taken.Snapshot());
    }

    private Task<Run> RunAsync(string line, string named) =>
        taken.Examdocs.RunAsync([.. line.Split(' ').Select(a => a.Replace("{0}", named, StringComparison.Ordinal))]);
}
