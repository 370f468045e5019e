using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.UseCases.Tests.SeededYears;
using NodaTime;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>Visits to the invented firm of the tests, with as many items as are wanted, all of which may stay in service.</summary>
internal static class InventedVisits
{
    /// <param name="folder">Where each is written as a JSON file.</param>
    /// <param name="items">How many items they have together.</param>
    /// <param name="perVisit">The most that one visit has.</param>
    /// <param name="day">Of the examination.</param>
    /// <returns>The files, in order.</returns>
    public static IReadOnlyList<string> Write(string folder, int items, int perVisit, LocalDate day)
    {
        Directory.CreateDirectory(folder);
        var chance = new Random(1);
        var (stock, examiner) = (new SeededStock(chance, day), new SeededExaminer("ex1", 1, chance));
        // A bridge and its harness belong together: what is printed of one names the other.
        var models = SeededModel.All.Where(m => !m.IsBridge && m.Category is not "harness").ToList();
        var visits = new List<string>();
        foreach (var chunk in Enumerable.Range(0, items).Chunk(perVisit))
        {
            var made = chunk
                .Select(n =>
                    stock.New(models[n % models.Count], site: 0, day.PlusDays(-chance.Next(200, 700)), examinedBefore: day.PlusMonths(-6))
                )
                .ToList();
            var record = SeededPaper.Record(
                SeededPaper.Visit(string.Create(CultureInfo.InvariantCulture, $"B-{visits.Count + 1:0000}"), site: 0, day),
                [.. made.Select(i => i.Row())],
                [.. made.Select(i => examiner.Examines(i, day, Basis.SixMonth))],
                []
            );
            visits.Add(Path.Combine(folder, $"{record.Visit.Reference}.json"));
            File.WriteAllBytes(visits[^1], JsonRecordWriter.Write(record));
        }
        return visits;
    }
}
