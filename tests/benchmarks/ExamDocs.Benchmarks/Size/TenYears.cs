using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Benchmarks.Size;

/// <summary>A visit of the invented firm, as the program read and decided it.</summary>
/// <param name="Record">Its record as stored.</param>
/// <param name="Stored">What the register lists of it.</param>
/// <param name="Outcomes">What was decided, item by item.</param>
internal sealed record DecidedOnce(byte[] Record, RememberedVisit Stored, IReadOnlyList<RememberedOutcome> Outcomes);

/// <summary>
/// One firm's twenty swivels, examined every half year for ten years. All that is the firm's own bears <see cref="Token"/>, so that
/// another firm's register is the same with another token in its place.
/// </summary>
internal static class TenYears
{
    public const int Items = 20;

    public const int Visits = 20;

    /// <summary>Five digits that start with no nought: folding an id leaves them together, and changes only the letter's case.</summary>
    public const string Token = "K10000";

    private static readonly string[] Criteria =
    [
        "identity",
        "cracks",
        "deformation",
        "wear-groove",
        "rotation",
        "axle-play",
        "closure",
        "sharp-edges",
        "heat",
        "severe-load",
        "marking",
        "corrosion",
        "scratches",
    ];

    public static string TokenOf(int firm) => string.Create(CultureInfo.InvariantCulture, $"K{10_000 + firm}");

    /// <summary>The day of a visit, from 0.</summary>
    public static LocalDate DayOf(int visit) => new LocalDate(2017, 1, 9).PlusMonths(6 * visit);

    /// <summary>The visits, decided one after the other by the program itself.</summary>
    public static IReadOnlyList<DecidedOnce> Decided()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-size-").FullName;
        try
        {
            var place = Path.Combine(folder, "register.db");
            for (var visit = 0; visit < Visits; visit++)
            {
                var path = Path.Combine(folder, FormattableString.Invariant($"{visit}.json"));
                File.WriteAllBytes(path, RecordOf(Token, visit));
                ImportVisits.Run([path], place, DayOf(visit).PlusDays(1), KnownRules.BuiltIn);
            }
            using var register = DocumentRegister.OpenToRead(place, DayOf(Visits));
            var outcomes = register.Visits.Outcomes().ToLookup(o => o.Visit.Visit, o => o.Outcome);
            return [.. register.Visits.All().Select(v => new DecidedOnce(register.Visits.Record(v.Visit), v, [.. outcomes[v.Visit]]))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The record of a visit of a firm, as somebody would write it.</summary>
    public static byte[] RecordOf(string token, int visit)
    {
        var day = Written(DayOf(visit));
        var record = new JsonObject
        {
            ["format"] = "examdocs/1",
            ["visit"] = new JsonObject
            {
                ["reference"] = FormattableString.Invariant($"V-{token}-{visit + 1:00}"),
                ["regime"] = "gb-loler",
                ["employer"] = Place($"Firm {token} Ltd"),
                ["premises"] = Place($"Yard {token}"),
                ["examinedOn"] = day,
                ["reportedOn"] = day,
            },
            ["people"] = new JsonArray(
                new JsonObject
                {
                    ["id"] = "ex1",
                    ["name"] = "Maren Oakhollow",
                    ["address"] = "3 Mill Steps, Hathering, Norshire ZZ6 2LD",
                    ["qualifications"] = "Examiner of climbing kit (2012)",
                    ["selfEmployed"] = true,
                }
            ),
            ["items"] = new JsonArray([.. Enumerable.Range(1, Items).Select(i => Item(token, i, visit))]),
            ["limits"] = new JsonArray(
                new JsonObject
                {
                    ["maker"] = "Ottermere Metalwork",
                    ["model"] = "Turnwell swivel",
                    ["source"] = new JsonObject
                    {
                        ["title"] = "Instructions for use, Turnwell swivel",
                        ["revision"] = "1",
                        ["page"] = "2",
                    },
                    ["noLimit"] = true,
                }
            ),
            ["examinations"] = new JsonArray([.. Enumerable.Range(1, Items).Select(i => Examination(token, i, day))]),
        };
        return Encoding.UTF8.GetBytes(record.ToJsonString());
    }

    private static JsonNode Item(string token, int item, int visit)
    {
        var written = new JsonObject
        {
            ["id"] = FormattableString.Invariant($"{token}-{item:00}"),
            ["category"] = "swivel-ring",
            ["description"] = "Swivel of a bridge",
            ["maker"] = "Ottermere Metalwork",
            ["model"] = "Turnwell swivel",
            ["serial"] = FormattableString.Invariant($"TS-{token}-{item:00}"),
            ["manufactured"] = "2016-08",
            ["purchased"] = "2016-11-07",
            ["firstUsed"] = "2016-12-05",
            ["safeWorkingLoad"] = new JsonObject
            {
                ["value"] = 1,
                ["unit"] = "persons",
                ["basis"] = "maker's instructions",
            },
            ["markedStrength"] = new JsonObject { ["value"] = 25, ["unit"] = "kN" },
            ["purpose"] = "lifts-persons",
            ["declaration"] = new JsonObject { ["reference"] = "OM-2016-170", ["on"] = "2016-09-13" },
            ["status"] = "in-use",
        };
        if (visit > 0)
            written["lastExamined"] = Written(DayOf(visit - 1));
        return written;
    }

    private static JsonNode Examination(string token, int item, string day) =>
        new JsonObject
        {
            ["item"] = FormattableString.Invariant($"{token}-{item:00}"),
            ["examiner"] = "ex1",
            ["author"] = "ex1",
            ["authenticatedBy"] = "ex1",
            ["basis"] = "six-month",
            ["examinedOn"] = day,
            ["observations"] = new JsonArray([.. Criteria.Select(c => new JsonObject { ["criterion"] = c, ["state"] = "clear" })]),
            ["conclusion"] = "fit",
        };

    private static JsonObject Place(string name) => new() { ["name"] = name, ["address"] = "4 Old Tannery Yard, Brackwater ZZ4 7QP" };

    private static string Written(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);
}
