using System.Text.RegularExpressions;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Rules;
using ExamDocs.Intake.Rules;
using ExamDocs.Intake.Workbook;
using static ExamDocs.Intake.Tests.Workbook.XlsxFile;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Whoever filled in a sheet reads the headings that stand on it, never names of the record format.</summary>
public sealed partial class SheetWordsTests
{
    private static readonly SourceMap Sheet = SourceMap.ForWorkbook("kit.xlsx", new Dictionary<string, string>(StringComparer.Ordinal));

    public static TheoryData<string> Hints =>
        [.. RuleBook.All.Select(r => r.Info).Concat(ReadingRules.All).Select(r => r.Hint.Text).Where(h => Member().IsMatch(h)).Distinct()];

    [Theory]
    [MemberData(nameof(Hints))]
    public void No_hint_names_a_member(string hint) => Assert.DoesNotMatch(Member(), Of("/items/0/id", hint, Sheet));

    [Theory]
    [InlineData(
        "Type true for selfEmployed, or false with the employer's name.",
        "Type yes for self-employed, or no with the employer's name."
    )]
    [InlineData("fill notTheSameAs: the earlier id", "fill the sheet Not the same: the earlier id")]
    [InlineData("here belongs true or false", "here belongs yes or no")]
    [InlineData("'fittedTo' is typed, and 'it is true' too", "'fittedTo' is typed, and 'it is true' too")]
    [InlineData("the maker's word, fittedTo, and the owner's", "the maker's word, fitted to, and the owner's")]
    public void A_member_is_the_heading_of_its_column(string said, string read) => Assert.Equal(read, Of("/items/0/id", said, Sheet));

    [Fact]
    public void A_heading_is_the_one_typed_on_the_sheet_itself()
    {
        var read = WorkbookRecordReader.Read(
            new XlsxFile()
                .Sheet("Harnesses", Row("id", "description", "LAST EXAMINATION") + Row("HAR-1", "harness", "2025-11-11"))
                .Stream(),
            "kit.xlsx"
        );

        Assert.Equal("type LAST EXAMINATION, or first used", Of("/items/0/id", "type lastExamined, or firstUsed", read.Sources));
        Assert.Equal("LAST EXAMINATION", read.Sources.PlaceOf("/items/0/lastExamined").Heading);
        Assert.Null(read.Sources.PlaceOf("/items/0").Heading);
    }

    [Fact]
    public void In_json_members_keep_their_names() =>
        Assert.Equal("true for selfEmployed", Of("/people/0", "true for selfEmployed", SourceMap.ForJson("visit.json")));

    private static string Of(string path, string hint, SourceMap sources) =>
        SheetWords.Of(new Finding("IDN900", Severity.Error, path, $"it is wrong", Message.AsIs(hint), ""), sources).Hint.Text;

    [GeneratedRegex(@"\b[a-z]+([A-Z][a-z]*)+\b", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Member();
}
