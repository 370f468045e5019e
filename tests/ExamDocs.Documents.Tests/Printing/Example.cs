using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Templates;
using NodaTime;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>The example's record, and the same record changed by a test.</summary>
internal static class Example
{
    public static readonly LocalDate Today = new(2026, 5, 12);

    public static ExaminationRecord Record { get; } = Read();

    public static DeterminedVisit Visit { get; } = Determined(Record);

    public static DeterminedVisit Determined(ExaminationRecord record) => Determine.Visit(record, [], History.None, Today);

    /// <summary>The example with one item changed.</summary>
    public static (DeterminedVisit Visit, DeterminedItem Item) With(string id, Func<Item, Item> change)
    {
        var at = Record.Items.ToList().FindIndex(i => i.Id == id);
        Item[] items = [.. Record.Items.Take(at), change(Record.Items[at]), .. Record.Items.Skip(at + 1)];
        var visit = Determined(Record with { Items = items });
        return (visit, visit.Items[at]);
    }

    /// <summary>The example with one item's examination changed, and the visit's regime where one is given.</summary>
    public static (DeterminedVisit Visit, DeterminedItem Item) WithExamination(
        string id,
        Func<Examination, Examination> change,
        string? regime = null
    )
    {
        Examination[] examinations = [.. Record.Examinations.Select(e => e.Item == id ? change(e) : e)];
        var visit = Determined(
            Record with
            {
                Examinations = examinations,
                Visit = Record.Visit with { Regime = regime ?? Record.Visit.Regime },
            }
        );
        return (visit, visit.Items.First(i => i.Item.Id == id));
    }

    public static DeterminedItem Item(string id) => Visit.Items.First(i => i.Item.Id == id);

    public static DocumentIdentity Identity(DocumentType type, int number = 1) =>
        new(type.Kind, $"{type.Letter}-2026-{number:000000}", Today, "0.1.0");

    /// <summary>The example's record as it lies in the repository.</summary>
    public static string File
    {
        get
        {
            var root = new DirectoryInfo(AppContext.BaseDirectory);
            while (!System.IO.File.Exists(Path.Combine(root.FullName, "ExamDocs.sln")))
                root = root.Parent ?? throw new InvalidOperationException("ExamDocs.sln is not above the tests");
            return Path.Combine(root.FullName, "examples", "visit.json");
        }
    }

    private static ExaminationRecord Read()
    {
        var read = JsonRecordReader.Read(System.IO.File.ReadAllBytes(File), "visit.json");
        return read.Record ?? throw new InvalidOperationException(read.Unreadable);
    }
}
