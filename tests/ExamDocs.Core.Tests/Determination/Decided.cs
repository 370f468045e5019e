using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using NodaTime;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>A record, read and determined; it answers in the words of the findings file.</summary>
internal sealed class Decided
{
    /// <summary>The day after the visit.</summary>
    private static readonly LocalDate AsOf = new(2026, 5, 12);

    private readonly DeterminedVisit? _visit;

    private Decided(DeterminedVisit? visit) => _visit = visit;

    public static Decided From(JsonNode record, params PastWithdrawal[] history) => FromText(record.ToJsonString(), history);

    public static Decided FromText(string json, params PastWithdrawal[] history) => AsOfDay(json, AsOf, history);

    public static Decided AsOfDay(string json, LocalDate asOf, params PastWithdrawal[] history)
    {
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(json), "visit.json");
        return new Decided(read.Record is null ? null : Determine.Visit(read.Record, read.Findings, new History(history), asOf));
    }

    /// <summary>True where the whole input was refused: nothing can be issued from it.</summary>
    public bool Refused => _visit is null;

    public int Count => _visit?.Items.Count ?? 0;

    public IEnumerable<string?> Ids => _visit?.Items.Select(i => i.Item.Id) ?? [];

    public string Outcome(string id = GoodRecord.Id) => Refused ? "refused" : Of(id).Outcome.Word();

    public string OutcomeAt(int index) => Refused ? "refused" : _visit!.Items[index].Outcome.Word();

    /// <summary>Reason codes of the item at an index, for items that share an id.</summary>
    public string CodesAt(int index) => string.Join(" ", _visit!.Items[index].Reasons.Select(r => r.Code).Distinct(StringComparer.Ordinal));

    public string? Until(string id = GoodRecord.Id) => Print(Of(id).Until);

    public string? Next(string id = GoodRecord.Id) => Print(Of(id).NextExaminationBy);

    public string? EndOfService(string id = GoodRecord.Id) => Print(Of(id).EndOfService);

    public string Codes(string id = GoodRecord.Id) => string.Join(" ", Of(id).Reasons.Select(r => r.Code).Distinct(StringComparer.Ordinal));

    /// <summary>Reason codes of one letter: W, U or D.</summary>
    public string Codes(char letter, string id = GoodRecord.Id) =>
        string.Join(" ", Of(id).Reasons.Select(r => r.Code).Where(c => c[0] == letter).Distinct(StringComparer.Ordinal));

    public IEnumerable<string> Errors =>
        _visit!.Findings.Where(f => f.Severity == Severity.Error).Select(f => $"{f.Code} {f.Path} {f.Message}");

    public bool Finds(string code) => _visit!.Findings.Any(f => string.Equals(f.Code, code, StringComparison.Ordinal));

    /// <summary>Outcome, dates and reasons in one line, for comparing whole results.</summary>
    public string Line(string id = GoodRecord.Id) =>
        Refused ? "refused" : string.Create(CultureInfo.InvariantCulture, $"{Outcome(id)} {Until(id)} {Next(id)} [{Codes(id)}]");

    /// <summary>From 0, the best, to 3, the worst; a refused input counts as the worst.</summary>
    public int Rank(string id = GoodRecord.Id) => Refused ? 4 : (int)Of(id).Outcome;

    /// <summary>The item itself.</summary>
    public DeterminedItem Item(string id = GoodRecord.Id) => Of(id);

    private DeterminedItem Of(string id) => _visit!.Items.First(i => string.Equals(i.Item.Id, id, StringComparison.Ordinal));

    private static string? Print(LocalDate? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
