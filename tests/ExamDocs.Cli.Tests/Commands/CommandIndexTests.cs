using ExamDocs.Cli.Commands;

namespace ExamDocs.Cli.Tests.Commands;

/// <summary>Which commands are made for what was typed.</summary>
public sealed class CommandIndexTests
{
    public static TheoryData<string> Names => [.. CommandIndex.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Only_the_command_that_is_named_is_made(string name) => Assert.Equal([name], Made(name, "label", "--help"));

    [Theory]
    [InlineData]
    [InlineData("chek", "visit.xlsx")]
    [InlineData("--language", "de", "check", "visit.xlsx")]
    [InlineData("[suggest]", "check")]
    public void Where_the_first_word_is_no_command_all_are_made(params string[] words) => Assert.Equal(CommandIndex.Names, Made(words));

    private static IEnumerable<string> Made(params string[] words) => CommandIndex.For(words).Select(c => c.Name);
}
