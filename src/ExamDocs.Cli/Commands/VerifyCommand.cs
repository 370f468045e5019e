using System.CommandLine;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Verifying;
using NodaTime;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs verify</c>: are these documents ours, whole, unaltered and current?</summary>
internal static class VerifyCommand
{
    private static readonly Argument<string[]> Files = new("FILE")
    {
        Description = "Printed documents (PDF), under whatever name.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<FileInfo?> Trust = new("--trust")
    {
        Description = "The issuer's own certificate (PEM), by which a signature counts; got from the issuer, not from the document.",
        HelpName = "FILE",
    };

    private static readonly Option<FileInfo?> Json = new("--json")
    {
        Description = "Also write all that is said to this file.",
        HelpName = "FILE",
    };

    public static Command Create()
    {
        var command = new Command(
            "verify",
            "Tells whether documents are ours, whole, unaltered and current, and whether the rules bear out what they say."
        )
        {
            Files,
            Trust,
            Json,
            OutputOptions.Replace,
            CommonOptions.Rules,
        };
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var register = CommonOptions.RegisterToRead(parsed);
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        if (Objection(parsed, register) is { } objection)
            return Refuse(objection);
        var (file, outputs) = (parsed.GetValue(Json)?.ToString(), OutputOptions.Guard(parsed, Json));
        outputs.Require(file);
        var trust = ReadTrust.From(parsed.GetValue(Trust)?.ToString());
        if (trust.Fault is { } fault)
            return Refuse(fault);
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Files = parsed.GetRequiredValue(Files),
                RegisterPath = register?.Place,
                Rules = rules,
                Now = SystemClock.Instance.GetCurrentInstant(),
            }.Trusting(trust),
            cancellation
        );
        if (file is not null)
            VerificationFile.WriteTo(file, outputs, verified);
        VerificationPrinter.Print(verified, parsed.GetValue(CommonOptions.Quiet));
        return verified.Any(v => v.Verdict is Verdict.NotValid) ? ExitCode.Findings
            : verified.All(v => v.IsValid) ? ExitCode.Done
            : ExitCode.CannotTell;
    }

    /// <summary>What was named and is not there; null where all is.</summary>
    private static string? Objection(ParseResult parsed, RegisterPlace? register)
    {
        if (register is { Exists: false })
            return $"{register.Place}: there is no such register";
        if (parsed.GetValue(Trust) is { Exists: false } trust)
            return $"{trust}: there is no such file";
        return parsed.GetRequiredValue(Files).Select(Unreadable).FirstOrDefault(why => why is not null);
    }

    private static string? Unreadable(string file)
    {
        try
        {
            using var opened = File.OpenRead(file);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return e is FileNotFoundException or DirectoryNotFoundException
                ? $"{file}: there is no such file"
                : $"{file}: the file cannot be opened";
        }
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Refused;
    }
}
