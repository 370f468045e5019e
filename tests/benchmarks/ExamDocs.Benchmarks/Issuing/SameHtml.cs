using System.Globalization;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Documents.Rendering;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using ExamDocs.Templates.DueLabel;
using ExamDocs.Templates.Report;
using NodaTime;

namespace ExamDocs.Benchmarks.Issuing;

/// <summary>The HTML of what is issued for visits, made by the program's own templates, for the other ways to print.</summary>
internal static class SameHtml
{
    public static async IAsyncEnumerable<string> OfAsync(IssueCase what, IReadOnlyList<string> visits, LocalDate today)
    {
        await using var renderer = new DocumentRenderer();
        var number = 0;
        foreach (var file in visits)
        {
            var read = JsonRecordReader.Read(await File.ReadAllBytesAsync(file), Path.GetFileName(file));
            var visit = Determine.Visit(read.Record!, read.Findings, History.None, today);
            var lists = what.IsSchedule ? [visit.Items] : visit.Items.Select(i => (IReadOnlyList<DeterminedItem>)[i]);
            foreach (var items in lists)
            {
                var type = DocumentTypes.Find(what.Kind)!;
                var identity = new DocumentIdentity(
                    type.Kind,
                    string.Create(CultureInfo.InvariantCulture, $"{type.Letter}-{today.Year}-{++number:000000}"),
                    today,
                    "benchmark"
                );
                var person = visit.Person(items[0].Examination!.Examiner)!;
                yield return type == DocumentTypes.DueLabel
                    ? await renderer.HtmlAsync(new DueLabelModel(identity, visit, items[0]))
                    : await renderer.HtmlAsync(new ReportModel(identity, visit, items, person, person));
            }
        }
    }
}
