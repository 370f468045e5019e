using System.Text.Json;
using ClosedXML.Excel;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>What the register knows of models is listed, and filled into the next workbook of anybody.</summary>
public sealed class ModelsCommandTests
{
    [Fact]
    public async Task Models_of_a_remembered_visit_are_listed_and_filled_into_a_new_workbook()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, "visit.json", maxAge: null);

        var listed = await examdocs.RunAsync("models");
        Assert.Equal((0, ""), (listed.ExitCode, listed.Err));
        var limits = Records.Small()["limits"]![0]!;
        Assert.Contains($"{limits["maker"]} {limits["model"]}", listed.Out, StringComparison.Ordinal);
        Assert.Contains($"{limits["source"]!["title"]}", listed.Out, StringComparison.Ordinal);

        var written = await examdocs.RunAsync("blank", "--known", "--category", "helmet", "--out", "next.xlsx");
        Assert.Equal((0, ""), (written.ExitCode, written.Err));
        using var workbook = new XLWorkbook(examdocs.At("next.xlsx"));
        Assert.Equal($"{limits["model"]}", workbook.Worksheet("Models").Cell(2, 2).GetString());
        var form = workbook.Worksheet("Visit").Column(1);
        Assert.Equal(
            $"{Records.Small()["people"]![0]!["name"]}",
            form.CellsUsed().Single(c => c.GetString() is "person name *").CellRight().GetString()
        );
        var (employer, visit) = (form.CellsUsed().Single(c => c.GetString() is "employer name *").CellRight(), Records.Small()["visit"]!);
        Assert.True(employer.IsEmpty());
        var offered = workbook
            .Worksheet("Words")
            .Range(employer.AsRange().SetDataValidation().Value.Split('!')[1].Replace("$", "", StringComparison.Ordinal));
        Assert.Contains($"{visit["employer"]!["name"]}", offered.Cells().Select(c => c.GetString()));
        Assert.Contains($"{visit["premises"]!["name"]}", offered.Cells().Select(c => c.GetString()));
        Assert.True(workbook.Worksheet("Helmets").Cell(2, 1).IsEmpty());
        Assert.False(workbook.TryGetWorksheet("Friction cords", out _));
    }

    [Fact]
    public async Task Two_values_under_one_revision_are_named_and_not_filled_in()
    {
        using var examdocs = new Examdocs();
        await ImportAsync(examdocs, "first.json", maxAge: 7);
        await ImportAsync(examdocs, "second.json", maxAge: 9, reference: "V-OTHER");

        var listed = await examdocs.RunAsync("models");
        Assert.Equal(1, listed.ExitCode);
        Assert.Contains("different values under this revision", listed.Out, StringComparison.Ordinal);
        using var json = JsonDocument.Parse((await examdocs.RunAsync("models", "--json")).Out);
        Assert.True(json.RootElement.EnumerateArray().Single().GetProperty("isDisputed").GetBoolean());

        Assert.Equal(0, (await examdocs.RunAsync("blank", "--known", "--out", "next.xlsx")).ExitCode);
        using var workbook = new XLWorkbook(examdocs.At("next.xlsx"));
        Assert.True(workbook.Worksheet("Models").Cell(2, 1).IsEmpty());
    }

    [Fact]
    public async Task Without_a_register_it_says_so()
    {
        using var examdocs = new Examdocs();
        Assert.Equal(2, (await examdocs.RunAsync("models")).ExitCode);
        Assert.Equal(2, (await examdocs.RunAsync("blank", "--known", "--out", "next.xlsx")).ExitCode);
        Assert.Empty(examdocs.Files());
    }

    private static async Task ImportAsync(Examdocs examdocs, string name, int? maxAge, string? reference = null)
    {
        var record = Records.Small();
        if (maxAge is not null)
            record["limits"]![0]!["maxAgeYears"] = maxAge;
        if (reference is not null)
            record["visit"]!["reference"] = reference;
        await File.WriteAllTextAsync(examdocs.At(name), record.ToJsonString(), TestContext.Current.CancellationToken);
        if (!File.Exists(examdocs.DefaultRegister))
            Assert.Equal(0, (await examdocs.RunAsync("register", "create")).ExitCode);
        Assert.Equal(0, (await examdocs.RunAsync("register", "import", name)).ExitCode);
        File.Delete(examdocs.At(name));
    }
}
