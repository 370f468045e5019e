using System.Text.Json.Nodes;
using ClosedXML.Excel;
using ExamDocs.Core.Criteria;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>What falls due is listed from the register, on screen and as JSON. The days of the records lie around today.</summary>
public sealed class DueCommandTests
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(DateTime.UtcNow);

    [Fact]
    public async Task What_falls_due_is_listed_and_what_is_withdrawn_stands_apart()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, Today.AddMonths(-2));
        var listed = await examdocs.RunAsync("due", "--to", Iso(Today.AddMonths(6)));
        Assert.Equal((0, ""), (listed.ExitCode, listed.Err));
        var (apart, due) = (
            listed.Out[..listed.Out.IndexOf("Falls due", StringComparison.Ordinal)],
            listed.Out[listed.Out.IndexOf("Falls due", StringComparison.Ordinal)..]
        );
        Assert.Contains("CUT", apart, StringComparison.Ordinal);
        Assert.DoesNotContain("CUT", due, StringComparison.Ordinal);
        Assert.Contains($"{Iso(Today.AddMonths(-2).AddMonths(6))}  GOOD, serial S-GOOD", due, StringComparison.Ordinal);
        Assert.Contains("1 to be examined; 1 not to be used", due, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de", "Fällig vom")]
    [InlineData("fr", "À échéance du")]
    public async Task The_screen_speaks_the_language_asked_for(string language, string words)
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, Today.AddMonths(-2));
        var listed = await examdocs.RunAsync("due", "--to", Iso(Today.AddMonths(6)), "--language", language);
        Assert.Contains(words, listed.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_json_each_item_has_its_days_and_its_standing()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, Today.AddMonths(-2));
        var list = JsonNode.Parse((await examdocs.RunAsync("due", "--to", Iso(Today.AddMonths(6)), "--json")).Out)!;
        Assert.Equal("examdocs-due/1", (string?)list["format"]);
        var good = Assert.Single(list["due"]!.AsArray())!;
        Assert.Equal(
            ("GOOD", "S-GOOD", "connector", Iso(Today.AddMonths(-2).AddMonths(6)), "not-issued"),
            (
                (string?)good["id"],
                (string?)good["serial"],
                (string?)good["category"],
                (string?)good["nextExaminationBy"],
                (string?)good["standing"]
            )
        );
        Assert.Equal(("CUT", "withdrawn"), ((string?)list["apart"]![0]!["id"], (string?)list["apart"]![0]!["standing"]));
    }

    /// <summary>Texts that a spreadsheet would take for formulas stay texts.</summary>
    [Fact]
    public async Task A_calendar_and_a_workbook_are_written_and_never_over_another_file()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, Today.AddMonths(-2), "=1+1");
        string[] asked = ["due", "--to", Iso(Today.AddMonths(6)), "--ics", "due.ics", "--out", "due.xlsx"];
        var written = await examdocs.RunAsync([.. asked, "--minutes", "connector=90,helmet=5", "--language", "de"]);
        Assert.Equal(0, written.ExitCode);
        Assert.Contains("1 Std. 30 Min.", written.Out, StringComparison.Ordinal);
        Assert.Contains("'helmet'", written.Err, StringComparison.Ordinal);
        Assert.Contains("Prüfung fällig", File.ReadAllText(examdocs.At("due.ics")), StringComparison.Ordinal);
        using (var workbook = new XLWorkbook(examdocs.At("due.xlsx")))
        {
            Assert.Equal(["Fällig", "Nach Monaten", "Vorgeschlagene Termine", "Nicht benutzen"], workbook.Worksheets.Select(s => s.Name));
            var due = workbook.Worksheet(1).Cell(2, 4);
            Assert.Equal(("GOOD", "=1+1"), (due.GetString(), due.CellRight().GetString()));
            Assert.DoesNotContain(workbook.Worksheets.SelectMany(s => s.CellsUsed()), c => c.HasFormula);
            Assert.Equal("CUT", workbook.Worksheet(4).Cell(2, 4).GetString());
            Assert.Equal((1, 90), (workbook.Worksheet(3).Cell(2, 4).GetValue<int>(), workbook.Worksheet(3).Cell(2, 5).GetValue<int>()));
        }
        var before = File.ReadAllBytes(examdocs.At("due.xlsx"));
        Assert.Equal(2, (await examdocs.RunAsync(asked)).ExitCode);
        Assert.Equal(before, File.ReadAllBytes(examdocs.At("due.xlsx")));
        Assert.Equal(0, (await examdocs.RunAsync([.. asked, "--replace"])).ExitCode);
    }

    /// <summary>A name that was mistyped must not look like an employer of whom nothing falls due.</summary>
    [Theory]
    [InlineData("Nobody of that name")]
    [InlineData(" ")]
    public async Task An_employer_without_kit_is_refused(string employer)
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, Today.AddMonths(-2));
        var listed = await examdocs.RunAsync("due", "--employer", employer, "--ics", "due.ics");
        Assert.Equal((2, ""), (listed.ExitCode, listed.Out));
        Assert.Contains($"no kit of '{employer}' is on record", listed.Err, StringComparison.Ordinal);
        Assert.False(File.Exists(examdocs.At("due.ics")));
    }

    [Fact]
    public async Task Days_in_the_wrong_order_and_a_register_that_is_not_there_are_refused()
    {
        using var examdocs = new Examdocs();
        Assert.Equal(2, (await examdocs.RunAsync("due", "--from", "2026-05-02", "--to", "2026-05-01")).ExitCode);
        Assert.Equal(2, (await examdocs.RunAsync("due")).ExitCode);
        Assert.Empty(examdocs.Files());
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static async Task ImportAsync(Examdocs examdocs, DateOnly day, string? serial = null)
    {
        var record = Records.Small();
        var (visit, like, examined) = (record["visit"]!, record["items"]![0]!, record["examinations"]![0]!);
        (visit["examinedOn"], visit["reportedOn"]) = (Iso(day), Iso(day));
        (JsonArray items, JsonArray examinations) = ([], []);
        foreach (var id in new[] { "GOOD", "CUT" })
        {
            var item = like.DeepClone();
            (item["id"], item["serial"], item["category"], item["partNumber"]) = (
                id,
                serial is null ? $"S-{id}" : $"{serial}{(id is "CUT" ? "0" : "")}",
                "connector",
                "C-1"
            );
            item["lastExamined"] = Iso(day.AddMonths(-6));
            items.Add(item);
            var examination = examined.DeepClone().AsObject();
            examination.Remove("diameters");
            (examination["item"], examination["conclusion"]) = (id, id is "CUT" ? "withdraw" : "fit");
            examination["observations"] = new JsonArray([
                .. Catalogue
                    .Find("connector")!
                    .Criteria.Where(c => c.Required)
                    .Select(c => new JsonObject { ["criterion"] = c.Id, ["state"] = "clear" }),
            ]);
            examinations.Add(examination);
        }
        (record["items"], record["examinations"]) = (items, examinations);
        File.WriteAllText(examdocs.At("visit.json"), record.ToJsonString());
        var imported = await examdocs.RunAsync("register", "import", "visit.json");
        Assert.True(imported.ExitCode is 0 or 1, imported.Err);
    }
}
