using System.CommandLine;
using NodaTime;

namespace ExamDocs.Cli;

/// <summary>Options that every command has, and what they come to.</summary>
internal static class CommonOptions
{
    private const string RegisterVariable = "EXAMDOCS_REGISTER";

    private const string RegisterDefault = "examdocs.db";

    public static readonly Option<FileInfo?> Register = new("--register")
    {
        Description = $"Register file (used by issue and label). Default: the environment's {RegisterVariable}, else {RegisterDefault} in this folder.",
        HelpName = "FILE",
        Recursive = true,
    };

    public static readonly Option<string> Language = new("--language")
    {
        Description = "Language of what is printed. English is the only one so far.",
        DefaultValueFactory = _ => "en",
        Recursive = true,
    };

    public static readonly Option<bool> Quiet = new("--quiet")
    {
        Description = "Say nothing but errors.",
        Recursive = true,
    };

    static CommonOptions() => Language.AcceptOnlyFromAmong("en");

    public static string RegisterPath(ParseResult parsed)
    {
        var typed = parsed.GetValue(Register)?.FullName;
        return typed ?? (Environment.GetEnvironmentVariable(RegisterVariable) is { Length: > 0 } named ? named : RegisterDefault);
    }

    /// <summary>The edge of the program: the one place that asks for today's date.</summary>
    public static LocalDate Today() => SystemClock.Instance.GetCurrentInstant().InZone(DateTimeZoneProviders.Bcl.GetSystemDefault()).Date;
}
