using System.Text.RegularExpressions;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests;

/// <summary>The rules give the outcomes that the example's page derives by hand.</summary>
public sealed partial class ExampleVisitTests
{
    private static readonly string Examples = Path.Combine(RepositoryRoot.Path, "examples");

    private static readonly DeterminedVisit Visit = Determined();

    private static readonly Dictionary<string, (string Outcome, string Codes)> ByHand = Derived();

    [Fact]
    public void Between_eight_and_twelve_items_may_not_be_used() =>
        Assert.InRange(ByHand.Values.Count(d => d.Outcome is "withdraw" or "undetermined"), 8, 12);

    [Fact]
    public void Every_item_has_the_outcome_derived_by_hand() =>
        Assert.Equal(
            Visit.Items.Select(i => Line(i.Item.Id!, ByHand.TryGetValue(i.Item.Id!, out var derived) ? derived : ("fit", ""))),
            Visit.Items.Select(i => Line(i.Item.Id!, (Printed(i), Codes(i)))),
            StringComparer.Ordinal
        );

    [Fact]
    public void No_finding_is_an_error() =>
        Assert.Empty(Visit.Findings.Where(f => f.Severity is Severity.Error).Select(f => $"{f.Code} {f.Item} {f.Path} {f.Message}"));

    private static string Line(string id, (string Outcome, string Codes) came) => $"{id}: {came.Outcome}; {came.Codes}";

    /// <summary>Each code once; a last day of use is left out for an item that may not be used at all.</summary>
    private static string Codes(DeterminedItem item) =>
        string.Join(
            ", ",
            item.Reasons.Select(r => r.Code)
                .Where(c => item.Outcome is Outcome.FitUntil || !c.StartsWith('D'))
                .Distinct(StringComparer.Ordinal)
        );

    private static string Printed(DeterminedItem item) =>
        item.Outcome switch
        {
            Outcome.Fit => "fit",
            Outcome.FitUntil => item.Until!.Value.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
            Outcome.Undetermined => "undetermined",
            _ => "withdraw",
        };

    private static DeterminedVisit Determined()
    {
        var read = JsonRecordReader.Read(File.ReadAllBytes(Path.Combine(Examples, "visit.json")), "visit.json");
        return Determine.Visit(read.Record!, read.Findings, History.None, new LocalDate(2026, 5, 12));
    }

    private static Dictionary<string, (string Outcome, string Codes)> Derived() =>
        File.ReadLines(Path.Combine(Examples, "README.md"))
            .Select(l => Row().Match(l))
            .Where(m => m.Success)
            .ToDictionary(m => m.Groups["id"].Value, m => (m.Groups["outcome"].Value, m.Groups["codes"].Value), StringComparer.Ordinal);

    [GeneratedRegex(
        @"^\| (?<id>[A-Z]{3}-\d\d) \| [^|]* \| (?<outcome>[a-z0-9-]+) \| (?<codes>[WUD]\d+(, [WUD]\d+)*) \|$",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Row();
}
