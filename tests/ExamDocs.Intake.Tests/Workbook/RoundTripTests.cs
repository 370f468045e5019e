using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Binding;
using ExamDocs.Intake.Json;
using ExamDocs.Intake.Workbook;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>A record written to a workbook and read back is the same record.</summary>
public sealed class RoundTripTests
{
    private static readonly string[] Lists = ["people", "items", "limits", "examinations", "renewals", "remedies", "releases", "disposals"];

    [Fact]
    public void The_example_comes_back_whole()
    {
        var record = Example();
        var (root, findings) = ThereAndBack(record);
        Assert.Empty(findings);
        var (back, slips) = RecordBinder.Bind(root);
        Assert.Empty(slips);
        AssertSame(record, back);
    }

    [Fact]
    public void Every_member_of_the_format_comes_back()
    {
        var record = FullRecord.Make();
        var (root, findings) = ThereAndBack(record);
        Assert.Empty(findings);
        var (back, slips) = RecordBinder.Bind(root);
        Assert.Empty(slips);
        AssertSame(record, back);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+44 20 7946 0000")]
    [InlineData("-5")]
    [InlineData("@home")]
    [InlineData("'quoted")]
    [InlineData("00123")]
    [InlineData("1/2")]
    [InlineData("2024-02-30")]
    [InlineData("first line\nsecond line")]
    [InlineData("_x0041_")]
    [InlineData("a <b> & \"c\"; d")]
    [InlineData("TRUE")]
    [InlineData("1E5")]
    public void Text_stays_what_it_was(string text)
    {
        var record = new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Items =
            [
                new Item
                {
                    Id = "A",
                    Category = "rope-bridge",
                    Description = text,
                    Serial = text,
                },
            ],
        };
        var (root, findings) = ThereAndBack(record);
        Assert.Empty(findings);
        var item = RecordBinder.Bind(root).Record.Items[0];
        Assert.Equal(text, item.Description);
        Assert.Equal(text, item.Serial);
    }

    [Fact]
    public void An_item_of_a_category_not_asked_for_or_not_known_is_not_lost()
    {
        var record = new ExaminationRecord
        {
            Items = [new Item { Id = "A", Category = "helmet" }, new Item { Id = "B", Category = "kite" }, new Item { Id = "C" }],
            Examinations =
            [
                new Examination { Item = "B", Observations = [new Observation { Criterion = "frame", StateAsTyped = "defect" }] },
            ],
            Visit = new Visit { ExaminedOn = new(2026, 5, 11) },
        };
        var (root, _) = ThereAndBack(record, [Catalogue.Find("rope-bridge")!]);
        var back = RecordBinder.Bind(root).Record;
        Assert.Equal("A helmet, B kite, C ", string.Join(", ", back.Items.Select(i => $"{i.Id} {i.Category}")));
        Assert.Equal(ObservedState.Defect, Assert.Single(back.Examinations.Single(e => e.Item is "B").Observations).State);
    }

    [Fact]
    public void For_the_next_visit_only_what_still_holds_is_filled_in()
    {
        var record = Example();
        var (root, findings) = ThereAndBack(record, Catalogue.All, forNextVisit: true);
        Assert.Empty(findings);
        var next = RecordBinder.Bind(root).Record;
        Assert.Equal(record.Items.Count, next.Items.Count);
        Assert.Equal(record.Limits.Count, next.Limits.Count);
        Assert.Equal(record.People.Count, next.People.Count);
        Assert.Equal(record.Visit.Employer, next.Visit.Employer);
        Assert.Null(next.Visit.ExaminedOn);
        Assert.Null(next.Visit.Reference);
        Assert.Equal(record.Examinations.Count, next.Examinations.Count);
        Assert.All(next.Examinations, e => Assert.NotNull(e.ExaminedOn));
        Assert.Equal(record.Examinations.Sum(e => e.Observations.Count), next.Examinations.Sum(e => e.Observations.Count));
        Assert.Equal(record.Renewals, next.Renewals);
        Assert.Equal(record.Releases, next.Releases);
        Assert.All(next.Items, i => Assert.DoesNotContain(record.Renewals, r => r.RemovedPart == i.Id && r.Item == i.FittedTo));
        var latest = record.Examinations.MaxBy(e => e.ExaminedOn ?? record.Visit.ExaminedOn)!;
        Assert.Equal(
            latest.ExaminedOn ?? record.Visit.ExaminedOn,
            next.Items.Single(i => string.Equals(i.Id, latest.Item, StringComparison.Ordinal)).LastExamined!.Latest
        );
    }

    /// <summary>A firm's own list may have it as out of use: on that day nobody examined it.</summary>
    [Fact]
    public void What_was_taken_out_of_use_unseen_was_not_examined_on_that_day()
    {
        var record = new ExaminationRecord
        {
            Format = ExaminationRecord.FormatName,
            Items =
            [
                new Item
                {
                    Id = "H-1",
                    Category = "helmet",
                    LastExamined = new PartialDate(2025, 5, 4),
                },
            ],
            Examinations =
            [
                new Examination
                {
                    Item = "H-1",
                    ExaminedOn = new(2026, 1, 9),
                    Conclusion = Conclusion.Withdraw,
                    Observations =
                    [
                        new Observation
                        {
                            Criterion = "identity",
                            StateAsTyped = "not-examined",
                            State = ObservedState.NotExamined,
                        },
                    ],
                },
            ],
        };
        var stream = Written(record, [], forNextVisit: true);
        var next = RecordBinder.Bind(WorkbookReader.Read(stream, "next.xlsx").Root!).Record;

        Assert.Equal(new PartialDate(2025, 5, 4), next.Items[0].LastExamined);
        Assert.Equal(Conclusion.Withdraw, Assert.Single(next.Examinations).Conclusion);
    }

    [Fact]
    public void An_observation_beyond_the_columns_stays_with_its_examination()
    {
        var record = new ExaminationRecord
        {
            Visit = new Visit { ExaminedOn = new(2026, 5, 11) },
            Items = [new Item { Id = "A", Category = "rope-bridge" }],
            Examinations =
            [
                new Examination
                {
                    Item = "A",
                    Observations =
                    [
                        new Observation { Criterion = "cover-cut", StateAsTyped = "clear" },
                        new Observation
                        {
                            Criterion = "cover-cut",
                            StateAsTyped = "defect",
                            Note = "second look",
                        },
                        new Observation { Criterion = "no-such-thing", StateAsTyped = "doubt" },
                    ],
                },
            ],
        };
        var (root, findings) = ThereAndBack(record);
        Assert.Empty(findings);
        var examination = Assert.Single(RecordBinder.Bind(root).Record.Examinations);
        Assert.Equal(
            [("cover-cut", "clear"), ("cover-cut", "defect"), ("no-such-thing", "doubt")],
            examination.Observations.Select(o => (o.Criterion!, o.StateAsTyped!))
        );
    }

    [Fact]
    public void The_same_content_gives_the_same_parts()
    {
        var record = Example();
        Assert.Equal(PartsOf(record), PartsOf(record));

        static List<string> PartsOf(ExaminationRecord record)
        {
            using var zip = new System.IO.Compression.ZipArchive(Written(record, Catalogue.All, forNextVisit: false));
            return
            [
                .. zip
                    .Entries.Where(e => e.FullName.StartsWith("xl/", StringComparison.Ordinal))
                    .Select(e => e.FullName + new StreamReader(e.Open()).ReadToEnd())
                    .Order(StringComparer.Ordinal),
            ];
        }
    }

    internal static ExaminationRecord Example()
    {
        var read = JsonRecordReader.Read(File.ReadAllBytes(Path.Combine(RepositoryRoot(), "examples", "visit.json")), "visit.json");
        Assert.Empty(read.Findings);
        return read.Record!;
    }

    internal static MemoryStream Written(ExaminationRecord? record, IReadOnlyList<Category> categories, bool forNextVisit)
    {
        var stream = new MemoryStream();
        CaptureWorkbook.Write(stream, categories, record, forNextVisit);
        stream.Position = 0;
        return stream;
    }

    internal static (ObjectNode Root, IReadOnlyList<Finding> Findings) ThereAndBack(
        ExaminationRecord record,
        IReadOnlyList<Category>? categories = null,
        bool forNextVisit = false
    )
    {
        var content = WorkbookReader.Read(Written(record, categories ?? [], forNextVisit), "kit.xlsx");
        Assert.Null(content.Unreadable);
        return (content.Root!, content.Findings);
    }

    internal static string RepositoryRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at!.FullName, "ExamDocs.sln")))
            at = at.Parent;
        return at.FullName;
    }

    /// <summary>Items stand by category in a workbook, so that the order of a list is compared within its sorted texts.</summary>
    private static void AssertSame(ExaminationRecord expected, ExaminationRecord actual)
    {
        var (wanted, got) = (RecordTree.Of(expected), RecordTree.Of(actual));
        foreach (var list in Lists)
            Assert.Equal(TreeText.List(wanted, list).Order(StringComparer.Ordinal), TreeText.List(got, list).Order(StringComparer.Ordinal));
        Assert.Equal(
            TreeText.Of(wanted.Members.Single(m => m.Key is "visit").Value),
            TreeText.Of(got.Members.Single(m => m.Key is "visit").Value)
        );
        Assert.Equal(expected.Format, actual.Format);
    }
}
