using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook.Writing;
using ExamDocs.Intake.Yard.Wording;

namespace ExamDocs.Intake.Yard;

/// <summary>
/// What the form's script works on: the record to go on from, the criteria, the words. JSON that no browser takes for markup.
/// </summary>
internal static class YardData
{
    /// <summary>This encoder writes every sign of HTML as an escape, so that no text can end the script element around it.</summary>
    private static readonly JsonSerializerOptions Escaped = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static string Of(IReadOnlyList<Category> categories, ExaminationRecord? record, KnownRules rules, YardPhrases phrases)
    {
        // What was read from a workbook, or is only models, names no format; the record that the form saves must.
        var known = NextVisit.Of(record ?? new ExaminationRecord()) with { Format = ExaminationRecord.FormatName };
        var offered = Offered(categories, known, rules);
        var data = new JsonObject
        {
            ["record"] = JsonNode.Parse(JsonRecordWriter.Write(known)),
            ["categories"] = new JsonArray([.. offered.Select(c => CategoryOf(c, phrases))]),
            ["regimes"] = Pairs(rules.Regimes.Select(r => (r.Id, phrases.Terms.Text(r.Name)))),
            ["bases"] = Pairs(Words.Bases.All.Select(w => (w, phrases.BasisWord(Words.Bases.Find(w)!.Value)))),
            ["purposes"] = Pairs(Words.Purposes.All.Select(w => (w, phrases.PurposeWord(Words.Purposes.Find(w)!.Value)))),
            ["statuses"] = Pairs(Words.Statuses.All.Select(w => (w, phrases.StatusWord(Words.Statuses.Find(w)!.Value)))),
            ["states"] = new JsonObject(
                Words.States.All.Select(w => KeyValuePair.Create(w, (JsonNode?)phrases.StateWord(Words.States.Find(w)!.Value)))
            ),
            ["words"] = new JsonObject(phrases.ByName().Select(p => KeyValuePair.Create(p.Key, (JsonNode?)p.Value))),
        };
        // The browser keeps what is typed under this name: the same form opened again finds it.
        data["form"] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(data.ToJsonString(Escaped))))[..32];
        return data.ToJsonString(Escaped);
    }

    private static IEnumerable<Category> Offered(IReadOnlyList<Category> categories, ExaminationRecord record, KnownRules rules)
    {
        var wanted = categories.Select(c => c.Id).Concat(record.Items.Select(i => i.Category)).ToHashSet(StringComparer.Ordinal);
        return rules.Categories.Where(c => wanted.Contains(c.Id));
    }

    private static JsonArray Pairs(IEnumerable<(string Word, string Text)> rows) =>
        new([.. rows.Select(r => new JsonArray(r.Word, r.Text))]);

    private static JsonObject CategoryOf(Category category, YardPhrases phrases) =>
        new()
        {
            ["id"] = category.Id,
            ["name"] = phrases.Terms.Category(category),
            // Diameters are of ropes; what is measured on metal is a gap or a groove.
            ["measured"] = category.Criteria.Any(c => c.Means.Contains(Means.Measure) && c.Material is MaterialFamily.Textile),
            ["criteria"] = new JsonArray([.. category.Criteria.Select(c => CriterionOf(c, phrases))]),
        };

    private static JsonObject CriterionOf(Criterion criterion, YardPhrases phrases) =>
        new()
        {
            ["id"] = criterion.Id,
            ["title"] = phrases.Terms.Criterion(criterion.Id),
            ["question"] = phrases.Terms.Question(criterion.Question),
            ["means"] = string.Join(", ", criterion.Means.Select(phrases.MeansWord)),
            ["required"] = criterion.Required,
            ["states"] = new JsonArray([.. States(criterion).Select(w => (JsonNode?)w)]),
        };

    /// <summary>Those that the criterion allows, the order of the record format: nothing found, something found, not looked at.</summary>
    private static IEnumerable<string> States(Criterion criterion) =>
        new[]
        {
            ObservedState.Clear,
            ObservedState.NoSign,
            ObservedState.Noted,
            ObservedState.Doubt,
            ObservedState.Defect,
            ObservedState.NotExamined,
            ObservedState.NotApplicable,
        }
            .Where(criterion.Allows)
            .Select(Words.States.WordFor);
}
