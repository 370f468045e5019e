using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli;

/// <summary>What documents are signed with, for the commands that issue them.</summary>
internal static class SigningOptions
{
    private const string PasswordVariable = "EXAMDOCS_KEY_PASSWORD";

    private static readonly Option<FileInfo?> Sign = new("--sign")
    {
        Description =
            "Sign each document electronically with this key: PKCS#12 (.p12, .pfx) or PEM, with its certificate and those above it.",
        HelpName = "KEY",
    };

    private static readonly Option<FileInfo?> PasswordFile = new("--key-password-file")
    {
        Description = $"File whose first line is the key's password. Default: the environment's {PasswordVariable}.",
        HelpName = "FILE",
    };

    private static readonly Option<string?> Timestamp = new("--timestamp")
    {
        Description =
            "Address of a server for timestamps (RFC 3161), which then sees a hash of each signature. Without an answer from "
            + "it the document is not issued.",
        HelpName = "URL",
    };

    public static void AddTo(Command command)
    {
        command.Add(Sign);
        command.Add(PasswordFile);
        command.Add(Timestamp);
        command.Validators.Add(Check);
    }

    public static bool IsGiven(CommandResult command) => command.GetResult(Sign) is not null;

    /// <summary>Null where nobody is to sign.</summary>
    public static SigningRequest? Of(ParseResult parsed)
    {
        if (parsed.GetValue(Sign) is not { } key)
            return null;
        var password = Environment.GetEnvironmentVariable(PasswordVariable);
        return new SigningRequest(
            key.ToString(),
            string.IsNullOrEmpty(password) ? null : password,
            parsed.GetValue(PasswordFile)?.ToString(),
            parsed.GetValue(Timestamp)
        );
    }

    private static void Check(CommandResult command)
    {
        if (!IsGiven(command) && (command.GetResult(PasswordFile) is not null || command.GetResult(Timestamp) is not null))
            command.AddError("--key-password-file and --timestamp go with --sign KEY");
    }
}
