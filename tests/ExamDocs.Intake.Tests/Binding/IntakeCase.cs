using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Json;

namespace ExamDocs.Intake.Tests.Binding;

/// <summary>One slip of the pen in a small record, and the one finding that must answer to it.</summary>
/// <param name="Code">The code of the finding.</param>
/// <param name="Pointer">Where it is found.</param>
/// <param name="Old">Text of the record, which stands in it once.</param>
/// <param name="New">What is written in its place.</param>
internal sealed record IntakeCase(string Code, string Pointer, string Old, string New)
{
    public override string ToString() => $"{Code} at {Pointer}: {New}";
}

/// <summary>A small record that reads without a finding, as text, so that what no JSON writer would write can be planted.</summary>
internal static class SmallRecord
{
    public const string Text = """
        {
          "format": "examdocs/1",
          "visit": { "reference": "V-1", "examinedOn": "2026-05-11" },
          "people": [ { "id": "ex1", "selfEmployed": true } ],
          "items": [ { "id": "A-1", "description": "Harness", "manufactured": "2024-02", "neverUsed": false,
            "standards": ["EN 358"], "safeWorkingLoad": { "value": 140, "unit": "kg" }, "purpose": "lifts-persons" } ],
          "limits": [ { "model": "F1", "maxUseYears": 6 } ],
          "examinations": [ { "item": "A-1",
            "observations": [ { "criterion": "identity", "state": "clear" } ],
            "diameters": [ { "positionMm": 50, "readingsMm": [11.1, 11.0] } ] } ]
        }
        """;

    public static string With(params IEnumerable<IntakeCase> slips) => slips.Aggregate(Text, (text, slip) =>
        {
            Assert.Equal(2, text.Split(slip.Old).Length);
            return text.Replace(slip.Old, slip.New, StringComparison.Ordinal);
        });

    public static ReadResult Read(string text) => JsonRecordReader.Read(Encoding.UTF8.GetBytes(text), "record.json");

    public static IReadOnlyList<(string Code, string Path)> Findings(string text) =>
        [.. Read(text).Findings.Select(f => (f.Code, f.Path)).OrderBy(f => f)];

    public static Finding Only(string text) => Assert.Single(Read(text).Findings);
}
