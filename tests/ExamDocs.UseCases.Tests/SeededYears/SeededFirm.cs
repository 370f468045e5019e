using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>
/// Three years of an invented firm with 400 items at three sites: visits, wear of bridges, withdrawals, renewals, kit touched by a
/// maker's safety notice, and second examinations by a colleague. Equal seeds give equal bytes.
/// </summary>
internal sealed class SeededFirm
{
    public const int Sites = 3;

    /// <summary>The months of its rounds.</summary>
    private static readonly LocalDate[] Rounds = [.. Enumerable.Range(0, 7).Select(n => new LocalDate(2023, 3, 6).PlusMonths(6 * n))];

    private readonly Random _chance;
    private readonly SeededExaminer[] _examiners;
    private readonly SeededStock _stock;
    private readonly List<ExaminationRecord> _visits = [];

    private SeededFirm(int seed)
    {
        _chance = new Random(seed);
        _examiners = [new("ex1", 1.1, _chance), new("ex2", 0.85, _chance)];
        _stock = new SeededStock(_chance, Rounds[0]);
        foreach (var (round, day) in Rounds.Index())
        {
            for (var site = 0; site < Sites; site++)
                Add(round, site, day.PlusDays(site));
            if (round % 2 == 1)
                AddSecondLook(day.PlusDays(7));
        }
    }

    /// <summary>The records of its visits, in order of day.</summary>
    public static IReadOnlyList<ExaminationRecord> Of(int seed) => new SeededFirm(seed)._visits;

    /// <summary>The same as files in the record format.</summary>
    /// <returns>Name and bytes of each.</returns>
    public static IReadOnlyList<(string Name, byte[] Json)> Files(int seed) =>
        [.. Of(seed).Select(v => ($"{v.Visit.Reference}.json", JsonRecordWriter.Write(v)))];

    /// <summary>Writes the files into a folder.</summary>
    /// <returns>Their paths.</returns>
    public static IReadOnlyList<string> Write(int seed, string folder)
    {
        Directory.CreateDirectory(folder);
        var paths = new List<string>();
        foreach (var (name, json) in Files(seed))
        {
            paths.Add(Path.Combine(folder, name));
            File.WriteAllBytes(paths[^1], json);
        }
        return paths;
    }

    /// <summary>Whether a visit belongs to the last of the half-yearly rounds.</summary>
    public static bool IsOfLastRound(ExaminationRecord visit) =>
        visit.Visit.Reference!.StartsWith(string.Create(CultureInfo.InvariantCulture, $"S-{Rounds.Length}-"), StringComparison.Ordinal);

    private void Add(int round, int site, LocalDate day)
    {
        var examiner = _examiners[(round + site) % 2];
        var visit = new SeededVisit(examiner, _stock, _chance, day, round, site);
        _visits.Add(visit.Record(SeededPaper.Visit(string.Create(CultureInfo.InvariantCulture, $"S-{round + 1}-{site + 1}"), site, day)));
    }

    /// <summary>A colleague examines some items once more, a week after the round, and knows nothing of what was found.</summary>
    private void AddSecondLook(LocalDate day)
    {
        var (round, site) = (_visits.Count, _visits.Count % Sites);
        var first = _visits.FindLast(v => string.Equals(v.Visit.Premises!.Name, SeededPaper.Site(site), StringComparison.Ordinal))!;
        var examiner = Array.Find(_examiners, e => !string.Equals(e.Id, first.Examinations[0].Examiner, StringComparison.Ordinal))!;
        var again = _stock
            .At(site)
            .Where(i => !i.Model.IsBridge && !i.Model.Category.Equals("harness", StringComparison.Ordinal) && i.LastExamined is not null)
            .Take(40)
            .ToList();
        _visits.Add(
            SeededPaper.Record(
                SeededPaper.Visit(string.Create(CultureInfo.InvariantCulture, $"S-B-{round}"), site, day),
                [.. again.Select(i => i.Row())],
                [.. again.Select(i => examiner.Examines(i, day, Basis.SixMonth))],
                []
            )
        );
        foreach (var item in again)
            item.LastExamined = day;
    }
}
