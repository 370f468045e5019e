using System.CommandLine;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli;

/// <summary>
/// The language of the screen: that of <c>--language</c>, else of the environment's EXAMDOCS_LANGUAGE, else English. Files take
/// theirs from <c>--language</c> alone, so that a machine's settings change none.
/// </summary>
internal static class Screen
{
    public const string Variable = "EXAMDOCS_LANGUAGE";

    private static readonly AsyncLocal<MessageLanguage?> Ambient = new();

    public static MessageLanguage Language => Ambient.Value ?? MessageLanguage.English;

    public static void Use(ParseResult parsed) =>
        Ambient.Value = Asked(parsed)
            ?? ReadPrintStyle.Screen(Environment.GetEnvironmentVariable(Variable) ?? "")
            ?? MessageLanguage.English;

    /// <summary>The language that files are asked for in; null where the command line names none.</summary>
    public static MessageLanguage? Asked(ParseResult parsed) =>
        parsed.GetResult(CommonOptions.LanguageTag) is { Implicit: false }
            ? ReadPrintStyle.Screen(parsed.GetValue(CommonOptions.LanguageTag)!)
            : null;

    public static string Say(Message message) => message.In(Language);
}
