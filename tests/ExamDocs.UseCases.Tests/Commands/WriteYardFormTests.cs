using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Commands;

/// <summary>What stands in the form for the yard when it is written; what it does in a browser is tried beside the workbench.</summary>
public sealed partial class WriteYardFormTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 5, 12);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("yard-");

    [Fact]
    public void The_same_record_gives_the_same_form_with_last_time_as_history_and_no_answer_for_this_one()
    {
        Write("last.json", Visit().Json);
        Assert.Null(WriteYardForm.Run(From("last.json", "a.html")));
        Assert.Null(WriteYardForm.Run(From("last.json", "b.html")));
        Assert.Equal(File.ReadAllBytes(At("a.html")), File.ReadAllBytes(At("b.html")));
        var record = Data("a.html")["record"]!;
        Assert.Null(record["visit"]!["reference"]);
        Assert.Null(record["visit"]!["examinedOn"]);
        Assert.Equal("2025-11-12", (string?)Assert.Single(record["examinations"]!.AsArray())!["examinedOn"]);
        Assert.Equal("2025-11-12", (string?)record["items"]![0]!["lastExamined"]);
    }

    [Fact]
    public void From_the_register_comes_what_falls_due()
    {
        Write("last.json", Visit().Json);
        ImportVisits.Run([At("last.json")], At("kit.db"), Today, KnownRules.BuiltIn);
        Assert.Null(
            WriteYardForm.Run(
                new CaptureRequest(At("due.html"), [], null, false)
                {
                    Register = new FromRegister(At("kit.db"), new LocalDate(2026, 5, 31), null, Today),
                }
            )
        );
        Assert.Equal("RB-1", (string?)Assert.Single(Data("due.html")["record"]!["items"]!.AsArray())!["id"]);
        Assert.Contains(
            "nothing in the register falls due",
            WriteYardForm.Run(
                new CaptureRequest(At("none.html"), [], null, false)
                {
                    Register = new FromRegister(At("kit.db"), new LocalDate(2026, 1, 31), null, Today),
                }
            )
        );
        Assert.False(File.Exists(At("none.html")));
    }

    [Fact]
    public void An_empty_form_knows_the_models_and_people_of_the_register_and_names_its_format()
    {
        Write("last.json", Visit().Json);
        ImportVisits.Run([At("last.json")], At("kit.db"), Today, KnownRules.BuiltIn);
        Assert.Null(WriteYardForm.Run(new CaptureRequest(At("a.html"), [], null, false) { Known = (At("kit.db"), Today) }));
        var record = Data("a.html")["record"]!;
        Assert.Equal("examdocs/1", (string?)record["format"]);
        Assert.Equal("Ada Fenn", (string?)Assert.Single(record["people"]!.AsArray())!["name"]);
        Assert.Equal("Model rope-bridge", (string?)Assert.Single(record["limits"]!.AsArray())!["model"]);
        Assert.Empty(record["items"]!.AsArray());
        Assert.Empty(record["examinations"]!.AsArray());
    }

    [Fact]
    public void An_examination_without_a_day_is_refused_because_its_answers_would_be_taken_for_new_ones()
    {
        var record = JsonNode.Parse(Visit().Json)!;
        record["visit"]!.AsObject().Remove("examinedOn");
        Write("last.json", record.ToJsonString());
        Assert.StartsWith("an examination of RB-1 has no day", WriteYardForm.Run(From("last.json", "a.html")), StringComparison.Ordinal);
        Assert.False(File.Exists(At("a.html")));
    }

    [Fact]
    public void No_text_of_a_record_is_markup_in_the_form()
    {
        var record = JsonNode.Parse(Visit().Json)!;
        foreach (var member in new[] { "description", "serial", "maker", "ownersMark" })
            record["items"]![0]![member] = "</script><!--<script>'\"&";
        Write("last.json", record.ToJsonString());
        Assert.Null(WriteYardForm.Run(From("last.json", "a.html")));
        var html = File.ReadAllText(At("a.html"));
        Assert.Equal(2, html.Split("<script").Length - 1);
        Assert.Equal(2, html.Split("</script").Length - 1);
        Assert.Equal("</script><!--<script>'\"&", (string?)Data("a.html")["record"]!["items"]![0]!["serial"]);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static StoryVisit Visit() => new StoryVisit("V-1", "2025-11-12", "Alder Vale Ltd").Bridge("RB-1", "Q100");

    private CaptureRequest From(string record, string form) => new(At(form), [], At(record), false);

    private string At(string name) => Path.Combine(_folder.FullName, name);

    private void Write(string name, string content) => File.WriteAllText(At(name), content);

    private JsonNode Data(string form) => JsonNode.Parse(Block().Match(File.ReadAllText(At(form))).Groups["json"].Value)!;

    [GeneratedRegex("""id="data">(?<json>.*?)</script>""", RegexOptions.Singleline, 1000)]
    private static partial Regex Block();
}
