using System.Globalization;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>Inputs of one visit are decided together: nothing is taken twice, and nothing is chosen between two that disagree.</summary>
public sealed class SeveralInputsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-merge");

    [Fact]
    public void The_same_input_twice_is_that_input_once()
    {
        var once = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today);
        var twice = Assert.Single(CheckRecord.All([Workspace.ExampleJson, Workspace.ExampleJson], Workspace.Today));

        Assert.Equal(Lines(once), Lines(twice));
        Assert.All(Codes(twice).Except(Codes(once)), code => Assert.Equal("INT050", code));
    }

    [Fact]
    public void Json_and_workbook_of_one_visit_agree_to_the_last_row()
    {
        var once = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today);
        var both = Assert.Single(CheckRecord.All([Workspace.ExampleWorkbook, Workspace.ExampleJson], Workspace.Today));

        Assert.Equal(Lines(once).Order(StringComparer.Ordinal), Lines(both).Order(StringComparer.Ordinal));
        Assert.DoesNotContain("INT051", Codes(both));
    }

    [Fact]
    public void A_visit_cut_in_two_comes_out_as_it_does_whole()
    {
        var whole = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today);
        var first = Edited(record => record["items"] = Half(record["items"]!, n => n % 2 == 0));
        var second = Edited(record => record["items"] = Half(record["items"]!, n => n % 2 == 1), alsoExaminations: false);

        var merged = Assert.Single(CheckRecord.All([first, second], Workspace.Today));

        Assert.Equal(Lines(whole).Order(StringComparer.Ordinal), Lines(merged).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Two_that_disagree_on_a_serial_name_both_places_and_leave_the_item_undecided()
    {
        var whole = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today).Visit!;
        var fit = whole.Items.First(i => i.Outcome is Outcome.Fit && i.Item.Serial is not null && i.Item.FittedTo is null);
        var index = whole.Items.ToList().IndexOf(fit);
        var other = Edited(record => record["items"]![index]!["serial"] = "ZZ-OTHER");

        var merged = Assert.Single(CheckRecord.All([Workspace.ExampleJson, other], Workspace.Today));

        var finding = Assert.Single(merged.Visit!.Findings, f => f.Code == "INT051");
        Assert.Equal(
            $"it is 'ZZ-OTHER' here, but '{fit.Item.Serial}' at {Workspace.ExampleJson}#/items/{index}/serial",
            finding.Message.Text
        );
        Assert.Equal($"{other}#/items/{index}/serial", merged.Sources.Locate(finding.Path));
        Assert.All(merged.Visit.Items.Where(i => i.Item.Id == fit.Item.Id), i => Assert.Equal(Outcome.Undetermined, i.Outcome));
        Assert.Equal(
            Lines(merged).Where(l => !l.StartsWith(fit.Item.Id + " ", StringComparison.Ordinal)),
            whole.Items.Where(i => i.Item.Id != fit.Item.Id).Select(Line)
        );
    }

    /// <summary>Whatever the order of the inputs: the defect that one of them saw holds.</summary>
    [Theory]
    [InlineData("defect", Outcome.Withdraw)]
    [InlineData("doubt", Outcome.Withdraw)]
    [InlineData("not-examined", Outcome.Undetermined)]
    public void Of_two_answers_to_one_question_the_worse_holds(string state, Outcome expected)
    {
        var (item, examination, observation) = ClearAnswer();
        var other = Edited(record =>
        {
            var answer = record["examinations"]![examination]!["observations"]![observation]!;
            (answer["state"], answer["note"]) = (state, "seen by the other");
        });
        foreach (string[] order in new[] { [Workspace.ExampleJson, other], new[] { other, Workspace.ExampleJson } })
        {
            var merged = Assert.Single(CheckRecord.All(order, Workspace.Today));
            Assert.Equal(expected, merged.Visit!.Items.Single(i => i.Item.Id == item).Outcome);
            var said = Assert.Single(merged.Visit.Findings, f => f.Code == "INT051" && f.Path.EndsWith("/state", StringComparison.Ordinal));
            Assert.Contains($"#/examinations/{examination}/observations/{observation}/state", said.Message.Text, StringComparison.Ordinal);
            Assert.Equal(item, said.Item);
        }
    }

    [Fact]
    public void Particulars_of_the_visit_that_disagree_leave_no_item_fit()
    {
        var other = Edited(record => record["visit"]!["employer"]!["name"] = "Somebody Else Ltd");
        var merged = Assert.Single(CheckRecord.All([Workspace.ExampleJson, other], Workspace.Today));

        var finding = Assert.Single(merged.Visit!.Findings, f => f.Code == "INT051");
        Assert.Equal("/visit/employer/name", finding.Path);
        Assert.Contains($"'Somebody Else Ltd' at {other}#/visit/employer/name", finding.Message.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(merged.Visit.Items, i => i.Outcome is Outcome.Fit or Outcome.FitUntil);
    }

    [Fact]
    public void An_examination_without_a_date_keeps_the_day_of_its_own_input()
    {
        var other = Edited(record => record["visit"]!["examinedOn"] = "2026-05-10");
        var merged = Assert.Single(CheckRecord.All([Workspace.ExampleJson, other], Workspace.Today));
        Assert.Contains(merged.Visit!.Items, i => i.Reasons.Any(r => r.Code[0] == 'W'));
        Assert.Contains(merged.Visit.Findings, f => f.Code == "INT051" && f.Path == "/visit/examinedOn");
        Assert.DoesNotContain(merged.Visit.Items, i => i.Outcome is Outcome.Fit or Outcome.FitUntil);
    }

    [Fact]
    public void One_person_under_two_names_is_a_disagreement_that_reaches_what_they_examined()
    {
        var other = Edited(record => record["people"]![0]!["name"] = "Somebody Else");
        var merged = Assert.Single(CheckRecord.All([Workspace.ExampleJson, other], Workspace.Today));
        Assert.Contains(merged.Visit!.Findings, f => f.Code == "INT051" && f.Path.EndsWith("/name", StringComparison.Ordinal));
        var examined = merged.Visit.Items.Where(i => i.Examination?.Examiner == "ex1").ToList();
        Assert.NotEmpty(examined);
        Assert.DoesNotContain(examined, i => i.Outcome is Outcome.Fit or Outcome.FitUntil);
    }

    [Fact]
    public void Visits_with_other_references_stay_apart_and_an_unreadable_input_says_so()
    {
        var other = Edited(record => record["visit"]!["reference"] = "V-2026-099");
        var broken = Path.Combine(_folder.FullName, "broken.json");
        File.WriteAllText(broken, "{");
        var inputs = CheckRecord.All([other, broken, Workspace.ExampleJson], Workspace.Today);
        Assert.Equal([other, broken, Workspace.ExampleJson], inputs.Select(i => i.File));
        Assert.Equal(3, inputs.Count);
        Assert.NotNull(inputs[1].Unreadable);
        // Each is decided on its own record, and knows what the other withdrew.
        Assert.Equal(
            CheckRecord.Of(Workspace.ExampleJson, Workspace.Today).Visit!.Items.Select(i => (i.Item.Id, i.Outcome)),
            inputs[2].Visit!.Items.Select(i => (i.Item.Id, i.Outcome))
        );
        Assert.Contains(inputs[2].Visit!.Items.Single(i => i.Item.Id is "BRG-02").Reasons, r => r.Code is "W10");
    }

    [Fact]
    public void What_reading_found_in_the_second_input_is_located_there()
    {
        var other = Edited(record =>
        {
            record["visit"]!["colour"] = "blue";
            record["items"]![3]!["serail"] = "1";
        });
        var merged = Assert.Single(CheckRecord.All([Workspace.ExampleJson, other], Workspace.Today));
        var places = merged.Visit!.Findings.Where(f => f.Code == "INT001").Select(f => merged.Sources.Locate(f.Path));
        Assert.Equal([$"{other}#/items/3/serail", $"{other}#/visit/colour"], places.Order(StringComparer.Ordinal));
        Assert.All(merged.Visit.Items, i => Assert.True(i.Outcome is Outcome.Undetermined or Outcome.Withdraw, i.Item.Id));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>An answer that could hide a defect: the first clear one to a decisive criterion of an item found fit.</summary>
    private static (string Item, int Examination, int Observation) ClearAnswer()
    {
        var visit = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today).Visit!;
        var fit = visit.Items.First(i => i.Outcome is Outcome.Fit);
        var examinations = JsonNode.Parse(File.ReadAllText(Workspace.ExampleJson))!["examinations"]!.AsArray();
        var at = Enumerable
            .Range(0, examinations.Count)
            .Last(n => (string?)examinations[n]!["item"] == fit.Item.Id && (string?)examinations[n]!["examinedOn"] is null or "2026-05-11");
        var observations = examinations[at]!["observations"]!.AsArray();
        return (fit.Item.Id!, at, Enumerable.Range(0, observations.Count).First(n => (string?)observations[n]!["state"] == "clear"));
    }

    private string Edited(Action<JsonNode> edit, bool alsoExaminations = true)
    {
        var record = JsonNode.Parse(File.ReadAllText(Workspace.ExampleJson))!;
        edit(record);
        if (!alsoExaminations)
            record["examinations"] = new JsonArray();
        var path = Path.Combine(_folder.FullName, string.Create(CultureInfo.InvariantCulture, $"{_folder.GetFiles().Length}.json"));
        File.WriteAllText(path, record.ToJsonString());
        return path;
    }

    private static JsonArray Half(JsonNode list, Func<int, bool> which) =>
        [.. list.AsArray().Where((_, n) => which(n)).Select(node => node!.DeepClone())];

    private static IEnumerable<string> Codes(CheckedInput input) =>
        input.Visit!.Findings.Select(f => f.Code).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Lines(CheckedInput input) => input.Visit!.Items.Select(Line);

    private static string Line(DeterminedItem item) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{item.Item.Id} {item.Outcome.Word()} {item.Until} {item.NextExaminationBy} "
                + $"{string.Join(' ', item.Reasons.Select(r => r.Code))}"
        );
}
