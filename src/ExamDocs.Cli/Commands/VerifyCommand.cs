using System.CommandLine;
using ExamDocs.Documents.Signing;
using ExamDocs.Register;
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
        if (TrustOf(parsed) is not { } trust)
            return Refuse($"{parsed.GetValue(Trust)}: the file holds no certificate in PEM");
        if (trust.IsStore)
            return Refuse(
                $"{parsed.GetValue(Trust)}: the file holds more than {SignatureTrust.MostCertificates} certificates, as a "
                    + "store of roots does; give the issuer's own certificate"
            );
        var verified = await VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Files = parsed.GetRequiredValue(Files),
                RegisterPath = register,
                Trust = trust,
                Rules = rules,
                Now = SystemClock.Instance.GetCurrentInstant(),
            },
            cancellation
        );
        if (parsed.GetValue(Json) is { } file)
            VerificationFile.WriteTo(file.FullName, verified);
        VerificationPrinter.Print(verified, parsed.GetValue(CommonOptions.Quiet));
        return verified.Any(v => v.Verdict is Verdict.NotValid) ? ExitCode.Findings
            : verified.All(v => v.IsValid) ? ExitCode.Done
            : ExitCode.CannotTell;
    }

    /// <summary>What was named and is not there; null where all is.</summary>
    private static string? Objection(ParseResult parsed, string? register)
    {
        if (register is not null && !DocumentRegister.Exists(register))
            return $"{register}: there is no such register";
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

    private static SignatureTrust? TrustOf(ParseResult parsed) =>
        parsed.GetValue(Trust) is { } file ? SignatureTrust.FromPem(File.ReadAllText(file.FullName)) : SignatureTrust.InNobody;

    private static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Refused;
    }
}
