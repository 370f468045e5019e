using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;
using UglyToad.PdfPig;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Commands;

public sealed class PrintDueTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 11, 9);

    private readonly Workspace _workspace = new();
    private int _files;

    public void Dispose() => _workspace.Dispose();

    [Fact]
    public async Task The_plan_has_what_may_not_be_used_first_then_the_months_the_visits_and_every_item()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1").Connector("C-1", "A3").Bridge("CUT", "Q1", i => i.Cut()));
        var result = await RunAsync(r => r with { PlanFile = At("plan.pdf") });
        Assert.Null(result.Refused ?? result.Failure);
        var text = Text(At("plan.pdf"));
        Assert.Contains("Not to be used", text, StringComparison.Ordinal);
        AssertInOrder(
            text,
            "Not to be used",
            "CUT",
            "Month by month",
            "How much in each month",
            "Visits proposed",
            "Item by item",
            "C-1",
            "H-1"
        );
        Assert.Contains("to be examined: 2; not to be used: 1", text, StringComparison.Ordinal);
        Assert.Contains("cannot be measured", text, StringComparison.Ordinal);
        Assert.Empty(Register(r => r.Documents()));
    }

    [Theory]
    [InlineData("de", "Was fällig wird")]
    [InlineData("fr", "Ce qui arrive à échéance")]
    public async Task The_plan_is_printed_whole_in_each_language(string language, string title)
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1"));
        var result = await RunAsync(r =>
            r with
            {
                PlanFile = At("plan.pdf"),
                Style = new PrintStyle { Language = Language.Find(language)! },
            }
        );
        Assert.Null(result.Refused ?? result.Failure);
        Assert.Contains(title, Text(At("plan.pdf")), StringComparison.Ordinal);
    }

    /// <summary>In the place of a letter that no font has stands a box: two serial numbers would look the same.</summary>
    [Fact]
    public async Task What_no_font_can_print_is_named_and_nothing_is_written()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A\U00030EDE"));
        var result = await RunAsync(r => r with { PlanFile = At("plan.pdf") });
        Assert.Contains("no installed font has \U00030EDE (U+30EDE)", result.Refused, StringComparison.Ordinal);
        Assert.False(File.Exists(At("plan.pdf")));
    }

    [Fact]
    public async Task Each_employer_gets_a_letter_of_its_own_kit_in_the_language_of_its_documents()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1").Connector("OFF", "A2", i => i.Doubt()));
        Import(Visit("V-2", "2026-06-02", "Birch Lane Ltd").Harness("B-1", "B1"));
        Issue(visit: 2, "B-1", "fr");
        var result = await RunAsync(r => r with { LettersFolder = At("letters") });
        Assert.Null(result.Refused ?? result.Failure);
        Assert.Equal(["Alder Vale Ltd.pdf", "Birch Lane Ltd.pdf"], result.Files.Select(Path.GetFileName));
        var (alder, birch) = (Text(result.Files[0]), Text(result.Files[1]));
        Assert.Contains("H-1", alder, StringComparison.Ordinal);
        Assert.Contains("Not to be used", alder, StringComparison.Ordinal);
        Assert.Contains("OFF", alder, StringComparison.Ordinal);
        Assert.DoesNotContain("B-1", alder, StringComparison.Ordinal);
        Assert.Contains("Vérifications approfondies à échéance", birch, StringComparison.Ordinal);
        Assert.DoesNotContain("A1", birch, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_one_letter_is_there_already_none_is_written()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1"));
        Import(Visit("V-2", "2026-06-02", "Birch Lane Ltd").Harness("B-1", "B1"));
        Directory.CreateDirectory(At("letters"));
        await File.WriteAllTextAsync(Path.Combine(At("letters"), "Birch Lane Ltd.pdf"), "mine", TestContext.Current.CancellationToken);
        await Assert.ThrowsAsync<OutputRefusedException>(() => RunAsync(r => r with { LettersFolder = At("letters") }));
        Assert.Single(Directory.GetFiles(At("letters")));
    }

    [Fact]
    public async Task More_items_than_anybody_reads_are_refused()
    {
        Import(Visit("V-1", "2026-06-01").Harness("H-1", "A1"));
        var list = List();
        var many = list with { Due = [.. Enumerable.Repeat(list.Due[0], PrintDue.MostItems + 1)] };
        var result = await PrintDue.RunAsync(
            new DuePrintRequest(many, []) { PlanFile = At("plan.pdf") },
            TestContext.Current.CancellationToken
        );
        Assert.Contains("name an employer", result.Refused, StringComparison.Ordinal);
        Assert.False(File.Exists(At("plan.pdf")));
    }

    private static void AssertInOrder(string text, params string[] parts)
    {
        var at = 0;
        foreach (var part in parts)
        {
            at = text.IndexOf(part, at, StringComparison.Ordinal);
            Assert.True(at >= 0, $"{part} is not where it should be in: {text}");
        }
    }

    private async Task<DuePrintResult> RunAsync(Func<DuePrintRequest, DuePrintRequest> asked)
    {
        var list = List();
        var visits = VisitProposals.Of(list.Due, VisitProposals.UsualTogetherDays, new Dictionary<string, int>(StringComparer.Ordinal));
        return await PrintDue.RunAsync(asked(new DuePrintRequest(list, visits)), TestContext.Current.CancellationToken);
    }

    private DueList List() => ListDue.In(new DueRequest(_workspace.Register, Today, Today.PlusMonths(12), Today));

    private string At(string name) => Path.Combine(_workspace.Folder, name);

    private static string Text(string file)
    {
        using var pdf = PdfDocument.Open(file);
        return string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    private void Issue(int visit, string item, string language) =>
        Register(register =>
            register.Publish(
                register.Take(new DocumentRequest('R', 2026, "report", "job", [item], Folder: null) { Visit = visit, Language = language }),
                [.. "%PDF-1.7"u8],
                1,
                "{}"
            )
        );

    private T Register<T>(Func<DocumentRegister, T> ask)
    {
        using var register = DocumentRegister.Open(_workspace.Register, Today);
        return ask(register);
    }

    private void Import(StoryVisit visit)
    {
        var path = At(FormattableString.Invariant($"visit-{++_files}.json"));
        File.WriteAllText(path, visit.Json);
        ImportVisits.Run([path], _workspace.Register, Today, KnownRules.BuiltIn);
    }
}
