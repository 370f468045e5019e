using System.Text.Json;
using System.Text.Json.Nodes;
using ExamDocs.Proof.Tests.SecondEvaluator;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>One version of one visit, as it was handed in.</summary>
internal sealed class Sheet
{
    private const int MostDaysApart = 31;

    public Sheet(string json, DateOnly lookedAtOn, int run, int number, string? labels)
    {
        (Json, LookedAtOn, Run, Number, Labels) = (json, lookedAtOn, run, number, labels);
        Record = JsonDocument.Parse(json).RootElement;
        var visit = Record.Member("visit")!.Value;
        var employer = Spelling.Firm(visit.Member("employer")?.Text("name"));
        Owner = Spelling.Firm(visit.Member("hiredFrom")?.Text("name")) ?? employer;
        (Reference, Employer, Day) = (Spelling.Of(visit.Text("reference")), employer, visit.Day("examinedOn") ?? default);
        (Stripped, FittedTo) = Strip(json);
        Rows = [.. Row.Of(this)];
    }

    public string Json { get; }

    public DateOnly LookedAtOn { get; }

    public int Run { get; }

    /// <summary>Its place in the order in which records came in.</summary>
    public int Number { get; }

    /// <summary>Beginning of the numbers of its labels; null where it gets none.</summary>
    public string? Labels { get; }

    public JsonElement Record { get; }

    /// <summary>
    /// The record without what ties an item to others: these ties reach into other records, and the second evaluator knows one.
    /// </summary>
    public JsonElement Stripped { get; }

    /// <summary>What the rows said they are fitted to, by position.</summary>
    public IReadOnlyDictionary<int, string> FittedTo { get; }

    public IReadOnlyList<Row> Rows { get; }

    public string? Owner { get; }

    public string? Employer { get; }

    public Spelling? Reference { get; }

    public DateOnly Day { get; }

    /// <summary>
    /// It is of the same reference and employer, and of days that are near each other: a reference may be used again later. An
    /// employer or a day that is not known counts as the same.
    /// </summary>
    public bool IsVersionOf(Sheet other) =>
        Reference is not null
        && other.Reference is not null
        && Reference.IsLike(other.Reference)
        && (Employer is null || other.Employer is null || Employer == other.Employer)
        && (Day == default || other.Day == default || Math.Abs(Day.DayNumber - other.Day.DayNumber) <= MostDaysApart);

    public bool IsLaterVersionOf(Sheet other) => Number > other.Number && IsVersionOf(other);

    /// <summary>The row with this id, letter by letter, else the one spelt alike.</summary>
    public Row? Find(string? id) =>
        id is null
            ? null
            : Rows.FirstOrDefault(r => r.Kit.Id == id)
                ?? (Spelling.Of(id) is { } like ? Rows.FirstOrDefault(r => r.Id?.IsLike(like) == true) : null);

    public string? LabelOf(Row row) => Labels is null ? null : $"{Labels}{row.Kit.Position:00}";

    private static (JsonElement, Dictionary<int, string>) Strip(string json)
    {
        var record = JsonNode.Parse(json)!.AsObject();
        Dictionary<int, string> ties = [];
        foreach (var (item, at) in record["items"]!.AsArray().Select((item, at) => (item!.AsObject(), at)))
        {
            if ((string?)item["fittedTo"] is { Length: > 0 } whole)
            {
                ties[at] = whole;
                item.Remove("fittedTo");
            }
        }

        return (JsonDocument.Parse(record.ToJsonString()).RootElement, ties);
    }
}
