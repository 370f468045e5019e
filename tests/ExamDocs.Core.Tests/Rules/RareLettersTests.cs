using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>An identity of rarer letters that look like Latin ones is the Latin one, or an error.</summary>
public sealed class RareLettersTests
{
    [Theory]
    [InlineData("I-12", "\u04c0-12", "a Cyrillic palochka")]
    [InlineData("C-12", "\u03f9-12", "a Greek lunate sigma")]
    [InlineData("J-12", "\u037f-12", "a Greek yot")]
    [InlineData("W-12", "\u051c-12", "a Cyrillic we")]
    [InlineData("Q-12", "\u051a-12", "a Cyrillic qa")]
    [InlineData("v-12", "\u03bd-12", "a small Greek nu")]
    [InlineData("\u0110-12", "\u00d0-12", "a D with a stroke and an eth are drawn alike")]
    [InlineData("I-12", "\u01c0-12", "a Latin click is a stroke")]
    public void It_is_the_Latin_one_or_is_named(string typed, string disguised, string what) =>
        Assert.True(Folded.Same(typed, disguised) || IsNamed(disguised), what);

    private static bool IsNamed(string id)
    {
        var record = new ExaminationRecord
        {
            Items =
            [
                new()
                {
                    Id = id,
                    Serial = id,
                    OwnersMark = id,
                },
            ],
        };
        var visit = Determine.Visit(record, [], History.None, new(2026, 5, 12));
        return visit.Findings.Any(f => f.Code is "IDN007");
    }
}
