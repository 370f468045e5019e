using System.Text.Json.Nodes;

namespace ExamDocs.Cli.Tests;

/// <summary><c>--rules DIR</c>: what it adds counts everywhere, and a folder at fault stops everything.</summary>
public sealed class RulesFolderTests : IDisposable
{
    private const string Folder = "my-rules";

    private readonly Examdocs _examdocs = new();

    [Fact]
    public async Task A_regime_of_the_user_s_own_gives_the_next_date()
    {
        Regime();
        var record = Climbing();

        var with = await _examdocs.RunAsync("check", record, "--rules", Folder);
        var without = await _examdocs.RunAsync("check", record);

        Assert.Equal(0, with.ExitCode);
        Assert.Contains(" 2027-03-03 ", with.Out, StringComparison.Ordinal);
        Assert.Contains("note at #/visit/regime: fenmark-climbing: The amendment", with.Err, StringComparison.Ordinal);
        Assert.Equal(1, without.ExitCode);
        Assert.Contains("[PAR026]", without.Err, StringComparison.Ordinal);
        Assert.Contains("UNDETERMINED", without.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_hint_names_what_the_user_added()
    {
        Regime();
        Category();
        var record = Records.Small();
        record["visit"]!["regime"] = "fenmark";

        var run = await _examdocs.RunAsync("check", record.Write(_examdocs, "visit.json"), "--rules", Folder);

        Assert.Contains("us, fenmark-climbing", run.Err, StringComparison.Ordinal);
        Assert.Contains("fenmark-climbing", (await _examdocs.RunAsync("rules", "PAR026", "--rules", Folder)).Out, StringComparison.Ordinal);
        Assert.Contains("throw-line", (await _examdocs.RunAsync("rules", "PAR028", "--rules", Folder)).Out, StringComparison.Ordinal);
        Assert.DoesNotContain("fenmark-climbing", (await _examdocs.RunAsync("rules", "PAR026")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_category_of_the_user_s_own_is_printed_written_into_a_workbook_and_read_from_it()
    {
        Category();
        var printed = await _examdocs.RunAsync("criteria", "--category", "throw-line", "--rules", Folder);
        Assert.Equal(0, printed.ExitCode);
        Assert.Contains("added by the user from categories/throw-line.json", printed.Out, StringComparison.Ordinal);
        Assert.Equal(2, (await _examdocs.RunAsync("criteria", "--category", "throw-line")).ExitCode);

        var record = ThrowLine(out var json);
        Assert.Contains("1 fit, ", (await _examdocs.RunAsync("check", record, "--rules", Folder)).Out, StringComparison.Ordinal);
        var blank = await _examdocs.RunAsync("blank", "--out", "visit.xlsx", "--from", record, "--answers", "--rules", Folder);
        Assert.Equal(0, blank.ExitCode);
        var read = await _examdocs.RunAsync("check", "visit.xlsx", "--rules", Folder);
        Assert.Contains("1 fit, ", read.Out, StringComparison.Ordinal);
        Assert.Contains(
            "there is no",
            (await _examdocs.RunAsync("blank", "--out", "b.xlsx", "--category", "throw-line")).Err,
            StringComparison.Ordinal
        );

        Records.SetState(json, "cuts", "defect");
        var cut = await _examdocs.RunAsync("check", json.Write(_examdocs, "cut.json"), "--rules", Folder);
        Assert.Contains("1 withdraw", cut.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_report_says_that_its_regime_was_added_and_from_which_file()
    {
        Regime();
        var run = await _examdocs.RunAsync("issue", Climbing(), "--rules", Folder, "--out", "out", "--only", "report");

        Assert.Equal(0, run.ExitCode);
        var text = PdfText(Directory.GetFiles(_examdocs.At("out"), "R-*.pdf").Single());
        Assert.Contains("added by the user, from regimes/fenmark.json", text, StringComparison.Ordinal);
        // For how long it is kept is in the evidence file.
        await _examdocs.RunAsync("issue", Climbing(), "--rules", Folder, "--out", "out", "--only", "evidence");
        var evidence = PdfText(Directory.GetFiles(_examdocs.At("out"), "F-*.pdf").Single());
        Assert.Contains("Keep this report until 3 Jun 2029", evidence, StringComparison.Ordinal);
        Assert.Contains("read in an unofficial copy", evidence, StringComparison.Ordinal);
    }

    /// <summary>Whichever page somebody holds in the hand; a report, its record, a notice and the label of kit withdrawn.</summary>
    [Theory]
    [InlineData("en", "user's own", "added by the user", "it was added by the user")]
    [InlineData("de", "eigenes Regelwerk des Anwenders", "vom Anwender hinzugefügt", "der Anwender hat es hinzugefügt")]
    [InlineData("fr", "propre à l’utilisateur", "ajouté par l’utilisateur", "l’utilisateur l’a ajouté")]
    public async Task Every_page_says_that_its_regime_is_the_user_s_own(string language, params string[] ways)
    {
        Regime();
        var json = UnderOwn(Records.Cut());
        var run = await _examdocs.RunAsync(
            "issue",
            json.Write(_examdocs, "cut.json"),
            "--rules",
            Folder,
            "--out",
            "out",
            "--language",
            language
        );

        Assert.True(run.ExitCode == 0, run.Err);
        var kinds = Directory.GetFiles(_examdocs.At("out"), "*.pdf");
        Assert.Equal("NQR", string.Concat(kinds.Select(f => Path.GetFileName(f)[0]).Distinct().Order()));
        foreach (var page in kinds.SelectMany(Pages))
            Assert.True(ways.Any(way => page.Contains(way, StringComparison.Ordinal)), page);
    }

    /// <summary>Ten years for kit that persons hang on, as the visit's regime: a warning at the item, and ten years.</summary>
    [Theory]
    [InlineData("\"months\": 9", "\"months\": 120", true)]
    [InlineData("\"months\": 9", "\"months\": 13", true)]
    [InlineData("\"months\": 9", "\"months\": 12", false)]
    public async Task A_long_interval_of_the_user_s_own_is_named(string old, string with, bool warned)
    {
        Put("regimes/fenmark.json", Replaced(old, with));
        var run = await _examdocs.RunAsync("check", Climbing(), "--rules", Folder);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(warned, run.Err.Contains("[PAR040]", StringComparison.Ordinal));
    }

    /// <summary>Beside the law of the visit it shortens, and the report names both.</summary>
    [Fact]
    public async Task Beside_the_visit_s_law_it_lengthens_nothing()
    {
        Put("regimes/fenmark.json", Replaced("\"months\": 9", "\"months\": 120"));
        var json = UnderOwn(Records.Small());
        json["visit"]!["regime"] = "gb-loler";
        json["examinations"]![0]!["regime"] = "fenmark-climbing";
        json["examinations"]![0]!["basis"] = "six-month";
        var run = await _examdocs.RunAsync(
            "issue",
            json.Write(_examdocs, "both.json"),
            "--rules",
            Folder,
            "--out",
            "out",
            "--only",
            "report"
        );
        Assert.Equal(0, run.ExitCode);
        var text = PdfText(Directory.GetFiles(_examdocs.At("out"), "R-*.pdf").Single());
        Assert.Contains("3 Dec 2026", text, StringComparison.Ordinal);
        Assert.Contains("SI 1998/2307", text, StringComparison.Ordinal);
        Assert.Contains("Fenmark Order 12/2019", text, StringComparison.Ordinal);
        Assert.Contains("added by the user, from regimes/fenmark.json", text, StringComparison.Ordinal);
    }

    /// <summary>What the folder holds, and words of the refusal.</summary>
    public static TheoryData<string, string, string> Refusals =>
        new()
        {
            { "regimes/gb.json", Replaced("\"fenmark-climbing\"", "\"gb-loler\""), "there is a regime 'gb-loler'" },
            { "regimes/gb.json", Replaced("\"fenmark-climbing\"", "\"gb-l0ler\""), "there is a regime 'gb-loler'" },
            { "regimes/half.json", "{", "not valid JSON at line 1" },
            { "regimes/deep.json", new string('[', 5_000), "not valid JSON" },
            { "regimes/huge.json", new string(' ', 300_000), "larger than 256 KiB" },
            {
                "regimes/soft.json",
                Replaced("\"months\": 9", "\"months\": 9, \"optional\": true"),
                "#/intervals/1/entries/0/optional: there is no such member here"
            },
            { "regimes/big.json", Replaced("\"months\": 9", "\"months\": 900"), "Type a whole number of months from 1 to 120" },
            { "regimes/a b.json", Replaced("\"months\": 9", "\"months\": 9"), "plain letters" },
            { "categories/h.json", "{\"id\":\"harness\"}", "#/: " },
            { "other/x.json", "{}", "there is no rule in it" },
        };

    [Theory]
    [MemberData(nameof(Refusals))]
    public async Task A_folder_at_fault_is_2_and_nothing_is_issued(string file, string content, string words)
    {
        Put(file, content);
        var record = Records.Small().Write(_examdocs, "visit.json");

        foreach (
            var arguments in (string[][])
                [
                    ["check", record],
                    ["issue", record, "--out", "out"],
                    ["criteria"],
                    ["rules"],
                    ["label", record, "--out", "l.pdf"],
                    ["blank", "--out", "b.xlsx"],
                ]
        )
        {
            var run = await _examdocs.RunAsync([.. arguments, "--rules", Folder]);
            Assert.Equal((2, ""), (run.ExitCode, run.Out));
            Assert.Contains(words, run.Err, StringComparison.Ordinal);
            Assert.Contains(Folder, run.Err, StringComparison.Ordinal);
        }
        Assert.Equal(["visit.json"], _examdocs.Files().Where(f => !f.StartsWith(Folder, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task One_faulty_file_stops_the_sound_ones_too()
    {
        Regime();
        Put("regimes/zz.json", "{}");
        var run = await _examdocs.RunAsync("check", Climbing(), "--rules", Folder);
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("zz.json#/: ", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_files_with_one_id_are_refused()
    {
        Regime();
        Put("regimes/zz.json", Block(0));
        Assert.Contains(
            "there is a regime 'fenmark-climbing'",
            (await _examdocs.RunAsync("rules", "--rules", Folder)).Err,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task No_folder_is_2()
    {
        var run = await _examdocs.RunAsync("rules", "--rules", "nowhere");
        Assert.Equal((2, ""), (run.ExitCode, run.Out));
        Assert.Contains("nowhere: there is no such folder", run.Err, StringComparison.Ordinal);
    }

    /// <summary>A genuine document is not called altered because the user's rules are not at hand, or are others by now.</summary>
    [Fact]
    public async Task A_document_under_rules_that_are_not_at_hand_as_they_were_is_not_checked_against_others()
    {
        Regime();
        var visit = Climbing();
        await _examdocs.RunAsync("issue", visit, "--out", "out", "--only", "report", "--rules", Folder);
        var report = Directory.GetFiles(_examdocs.At("out"), "R-*.pdf").Single();
        var known = await _examdocs.RunAsync("verify", report, "--rules", Folder);
        Assert.Equal(0, known.ExitCode);
        Assert.DoesNotContain("not at hand", known.Out, StringComparison.Ordinal);

        Put("regimes/fenmark.json", Replaced("\"months\": 9", "\"months\": 8"));
        foreach (var rules in new[] { new[] { "--rules", Folder }, [] })
        {
            var run = await _examdocs.RunAsync(["verify", report, .. rules]);
            Assert.Equal(0, run.ExitCode);
            Assert.Contains("regimes/fenmark.json", run.Out, StringComparison.Ordinal);
            Assert.Contains("not at hand as they were", run.Out, StringComparison.Ordinal);
        }
    }

    public void Dispose() => _examdocs.Dispose();

    private void Regime() => Put("regimes/fenmark.json", Block(0));

    private void Category() => Put("categories/throw-line.json", Block(1));

    private void Put(string file, string content)
    {
        var path = _examdocs.At(Path.Combine(Folder, file));
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, content);
    }

    /// <summary>The small record under the user's regime: examined on 3 June 2026, nine months on is 3 March 2027.</summary>
    private string Climbing() => UnderOwn(Records.Small()).Write(_examdocs, "visit.json");

    private static JsonObject UnderOwn(JsonObject record)
    {
        record["visit"]!["regime"] = "fenmark-climbing";
        record["examinations"]![0]!["basis"] = "twelve-month";
        record["examinations"]![0]!.AsObject().Remove("exposure");
        record["limits"]![0]!.AsObject().Remove("intervalMonths");
        return record;
    }

    private string ThrowLine(out JsonObject record)
    {
        record = Records.Small();
        record["items"]![0]!["category"] = "throw-line";
        record["examinations"]![0]!.AsObject().Remove("defects");
        record["examinations"]![0]!.AsObject().Remove("diameters");
        record["examinations"]![0]!["observations"] = new JsonArray([
            .. JsonNode.Parse(Block(1))!["criteria"]!
                .AsArray()
                .Select(c => new JsonObject
                {
                    ["criterion"] = (string)c!["id"]!,
                    ["state"] = "clear",
                    ["note"] = "seen",
                }),
        ]);
        return record.Write(_examdocs, "line.json");
    }

    private static string Replaced(string old, string with)
    {
        Assert.Contains(old, Block(0), StringComparison.Ordinal);
        return Block(0).Replace(old, with, StringComparison.Ordinal);
    }

    private static string Block(int number) =>
        File.ReadAllText(Path.Combine(Path.GetDirectoryName(Records.ExampleJson)!, "..", "docs", "regimes.md"))
            .ReplaceLineEndings("\n")
            .Split("```json\n")[number + 1]
            .Split("```")[0];

    private static IEnumerable<string> Pages(string file) => Raw(file).Split('\f').Select(Squeezed).Where(page => page.Length > 0);

    private static string PdfText(string file) => Squeezed(Raw(file));

    private static string Squeezed(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static string Raw(string file)
    {
        using var process = System.Diagnostics.Process.Start(
            new System.Diagnostics.ProcessStartInfo("pdftotext", [file, "-"]) { RedirectStandardOutput = true }
        )!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return text;
    }
}
