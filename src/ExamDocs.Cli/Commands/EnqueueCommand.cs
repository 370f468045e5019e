using System.CommandLine;
using System.Globalization;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs work enqueue</c>: what <c>issue</c> would print here is left to the machines that work at the register.</summary>
internal static class EnqueueCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT")
    {
        Description = "Records, as issue takes them. They travel with their photos, your rules and your letterhead.",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>There only to say why it is not.</summary>
    private static readonly Option<string?> Sign = new("--sign") { Hidden = true };

    public static Command Create()
    {
        var command = new Command("enqueue", "Puts a job on the list: to issue these inputs, as of today, on any machine that works.")
        {
            Inputs,
            IssueOptions.PerItem,
            IssueOptions.Only,
            IssueOptions.Reason,
            Sign,
            CommonOptions.Letterhead,
            CommonOptions.Rules,
        };
        ReadingOptions.AddTo(command);
        command.Validators.Add(result =>
        {
            if (result.GetResult(Sign) is not null)
                result.AddError(
                    "--sign does not go with work: whoever works holds nobody's key. Sign on the machine that has the key: examdocs issue "
                        + "--sign"
                );
        });
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var result = EnqueueWork.Run(
            new EnqueueRequest
            {
                Inputs = parsed.GetRequiredValue(Inputs),
                RegisterPath = place.Place,
                Today = CommonOptions.Today(),
                Language = parsed.GetValue(CommonOptions.LanguageTag)!,
                PerItem = parsed.GetValue(IssueOptions.PerItem),
                Only = parsed.GetValue(IssueOptions.Only),
                Reason = IssueOptions.ReasonOf(parsed),
                ReadFromMetres = ReadingOptions.Metres(parsed),
                SignFactor = ReadingOptions.SignFactor(parsed),
                RulesFolder = parsed.GetValue(CommonOptions.Rules)?.ToString(),
                LetterheadFile = parsed.GetValue(CommonOptions.Letterhead)?.ToString(),
            }
        );
        foreach (var fault in result.Faults)
            Console.Error.WriteLine(fault);
        if (result.Number is not { } number)
            return ExitCode.Refused;
        FindingsPrinter.Print(result.Inputs, parsed.GetValue(CommonOptions.Quiet));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"job {number}"));
        return CheckCommand.ExitOf(result.Inputs);
    }
}
