using ExamDocs.Core.Criteria;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Rules;
using ExamDocs.Intake.Workbook;
using ExamDocs.Intake.Workbook.Shape;

namespace ExamDocs.Intake.Tests.Workbook;

public sealed class ShapeTests
{
    [Fact]
    public void No_sheet_has_two_columns_of_one_heading()
    {
        Assert.True(WorkbookShape.Known.Count > Catalogue.All.Count);
        foreach (var sheet in WorkbookShape.Known)
            Assert.Equal(sheet.Columns.Count, sheet.Columns.Select(c => Heading.Key(c.Heading)).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void No_two_sheets_have_one_name_and_all_fit_a_tab()
    {
        var names = WorkbookShape.Known.Select(s => Heading.Key(s.Name)).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
        Assert.All(WorkbookShape.Known, s => Assert.InRange(s.Name.Length, 1, 31));
    }

    [Fact]
    public void Headings_are_as_they_are_matched_and_every_one_is_explained()
    {
        foreach (var column in WorkbookShape.Known.SelectMany(s => s.Columns))
        {
            Assert.Equal(Heading.Normal(column.Heading), column.Heading);
            Assert.NotEmpty(column.Help);
        }
    }

    [Fact]
    public void Every_finding_has_a_code_of_its_own()
    {
        var codes = ReadingRules.All.Select(r => r.Code).ToList();
        Assert.Equal(codes.Count, codes.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData(typeof(CellFindings))]
    [InlineData(typeof(SheetFindings))]
    [InlineData(typeof(BesideFindings))]
    public void Every_finding_of_a_workbook_is_listed(Type findings)
    {
        var named = findings.GetFields().Select(f => f.GetValue(null)).Cast<RuleInfo>();
        Assert.Equal(named, ((IEnumerable<RuleInfo>)findings.GetProperty("All")!.GetValue(null)!).ToList());
    }

    /// <summary>A record filled in by hand proves little if a member was forgotten in it: this finds the forgotten one.</summary>
    [Fact]
    public void The_full_record_leaves_no_member_empty() => AssertFull(FullRecord.Make(), "record");

    private static void AssertFull(object value, string path)
    {
        if (value is string or decimal)
            return;
        foreach (
            var property in value
                .GetType()
                .GetProperties()
                .Where(p => p.GetIndexParameters().Length == 0 && p.Name is not "ExaminedOnUnreadable")
        )
        {
            var at = $"{path}.{property.Name}";
            // Only the employer of a visit is rung.
            if (property.Name is "Telephone" && !path.EndsWith("Visit.Employer", StringComparison.Ordinal))
                continue;
            var member = property.GetValue(value);
            if (member is null)
                Assert.Fail($"{at} is empty");
            if (member is System.Collections.IList list)
            {
                Assert.True(list.Count > 0, $"{at} is empty");
                AssertFull(list[Richest(list)]!, at);
            }
            else if (
                member.GetType().Namespace is "ExamDocs.Core.Records"
                && member.GetType().IsClass
                && member is not Core.Records.PartialDate
            )
                AssertFull(member, at);
        }
    }

    /// <summary>The element with the most members filled in; the others may be there for their own sake.</summary>
    private static int Richest(System.Collections.IList list) =>
        Enumerable
            .Range(0, list.Count)
            .MaxBy(n =>
                list[n]!.GetType().GetProperties().Count(p => p.GetIndexParameters().Length == 0 && p.GetValue(list[n]) is not null)
            );
}
