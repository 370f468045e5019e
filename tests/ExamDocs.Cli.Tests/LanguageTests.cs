using System.Text.Json;

namespace ExamDocs.Cli.Tests;

/// <summary>The language of the screen and of the files beside it.</summary>
public sealed class LanguageTests : IDisposable
{
    private const string Variable = "EXAMDOCS_LANGUAGE";

    private readonly Examdocs _examdocs = new();

    [Theory]
    [InlineData(
        "de",
        "    Fehler bei #/visit/premises/address: die Anschrift des Prüforts fehlt.\n"
            + "      Name und Anschrift des Ortes eintragen, an dem geprüft wurde. [PAR002]",
        "UNGEKLÄRT",
        "0 weiter benutzbar, 0 benutzbar bis, 1 ungeklärt, 0 aussondern"
    )]
    [InlineData(
        "fr",
        "    erreur à #/visit/premises/address\u00A0: l’adresse du lieu manque.\n"
            + "      Inscrire le nom et l’adresse du lieu où la vérification a été faite. [PAR002]",
        "EN ATTENTE DE DÉCISION",
        "0 maintenu en service, 0 maintenu jusqu’à une date, 1 en attente de décision, 0 à retirer du service"
    )]
    public async Task Findings_and_outcomes_are_in_the_language_asked_for(string tag, string finding, string outcome, string counts)
    {
        var run = await _examdocs.RunAsync("check", WithoutAddress(), "--language", tag);

        Assert.Equal(1, run.ExitCode);
        Assert.Contains(finding, run.Err, StringComparison.Ordinal);
        Assert.Contains(outcome, run.Out, StringComparison.Ordinal);
        Assert.Contains(counts, run.Out, StringComparison.Ordinal);
        Assert.Contains("U3", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_is_in_English_unless_the_command_names_a_language()
    {
        var visit = WithoutAddress();
        var english = await Json("en.json", "check", visit, "--json", _examdocs.At("en.json"));
        _examdocs.With(Variable, "de");
        var elsewhere = await Json("here.json", "check", visit, "--json", _examdocs.At("here.json"));
        var german = await Json("de.json", "check", visit, "--json", _examdocs.At("de.json"), "--language", "de");

        Assert.Equal(english.Text, elsewhere.Text);
        Assert.Contains("address: die Anschrift des Prüforts fehlt", elsewhere.Err, StringComparison.Ordinal);
        Assert.Equal("the address of the premises is missing", Finding(english.Text, "message"));
        Assert.Equal("die Anschrift des Prüforts fehlt", Finding(german.Text, "message"));
        Assert.Equal("Name und Anschrift des Ortes eintragen, an dem geprüft wurde.", Finding(german.Text, "hint"));
        Assert.All(["code", "severity", "location"], member => Assert.Equal(Finding(english.Text, member), Finding(german.Text, member)));
        Assert.Equal(Outcome(english.Text), Outcome(german.Text));
    }

    [Fact]
    public async Task A_language_of_the_environment_that_is_not_known_is_English()
    {
        var run = await _examdocs.With(Variable, "xx").RunAsync("check", WithoutAddress());
        Assert.Contains("the address of the premises is missing", run.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rule_is_explained_in_the_language_too()
    {
        var run = await _examdocs.RunAsync("rules", "PAR002", "--language", "de");
        Assert.StartsWith("PAR002: Der Ort der Prüfung hat Name und Anschrift", run.Out, StringComparison.Ordinal);
        Assert.Contains("Schwere: Fehler", run.Out, StringComparison.Ordinal);
        Assert.Contains("Warum: Wo geprüft wurde, entscheidet, welche Behörde", run.Out, StringComparison.Ordinal);
    }

    private string WithoutAddress()
    {
        var record = Records.Small();
        record["visit"]!["premises"]!["address"] = "";
        return record.Write(_examdocs, $"{Guid.NewGuid():N}.json");
    }

    private async Task<(string Text, string Err)> Json(string file, params string[] arguments)
    {
        var run = await _examdocs.RunAsync(arguments);
        return (await File.ReadAllTextAsync(_examdocs.At(file), TestContext.Current.CancellationToken), run.Err);
    }

    private static string? Finding(string json, string member) =>
        JsonDocument
            .Parse(json)
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .First(f => f.GetProperty("code").GetString() is "PAR002")
            .GetProperty(member)
            .GetString();

    private static string? Outcome(string json) =>
        JsonDocument.Parse(json).RootElement.GetProperty("items")[0].GetProperty("outcome").GetString();

    public void Dispose() => _examdocs.Dispose();
}
