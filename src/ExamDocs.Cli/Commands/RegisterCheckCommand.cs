using System.CommandLine;
using System.Globalization;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs register check</c>: is the register sound?</summary>
internal static class RegisterCheckCommand
{
    private static readonly Option<string[]> Checkpoints = new("--checkpoint")
    {
        Description = "A checkpoint.json that was kept elsewhere: the log must still begin as it did then. May be given several times.",
        HelpName = "FILE",
        DefaultValueFactory = _ => [],
    };

    public static Command Create() =>
        RegisterCommand.Sub(
            "check",
            "Looks for damage, gaps and alterations, and decides every record again.",
            [Checkpoints, CommonOptions.Rules],
            Run
        );

    private static int Run(ParseResult parsed)
    {
        var (kept, faults) = ReadCheckpoints.From(parsed.GetValue(Checkpoints) ?? []);
        foreach (var fault in faults)
            Console.Error.WriteLine(fault);
        if (faults.Count > 0)
            return ExitCode.Refused;
        if (CommonOptions.KnownRules(parsed) is not { } rules || RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        using var register = DocumentRegister.OpenToRead(place.Place, CommonOptions.Today());
        var found = CheckRegister.Run(register, kept, rules);
        foreach (var sentence in found.Faults)
            Console.WriteLine(sentence);
        if (parsed.GetValue(CommonOptions.Quiet))
            return found.Faults.Count == 0 ? ExitCode.Done : ExitCode.Findings;
        foreach (var note in found.Notes)
            Console.WriteLine($"note: {note}");
        if (found.DecidedByOthers > 0)
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"note: {found.DecidedByOthers} records were decided by another version, or with rules of your own; "
                        + $"{found.DecidedOtherwise} of them come out otherwise now"
                )
            );
        if (found.Faults.Count == 0)
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{register.Place} is sound: {register.Issued().Count} documents, {register.Visits.All().Count} records, "
                        + $"log of {register.Checkpoint()?.Size ?? 0} entries"
                )
            );
        if (kept.Count == 0)
            Console.WriteLine($"No checkpoint was given. {WhatCheckpointsAreFor}");
        return found.Faults.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }

    internal const string WhatCheckpointsAreFor =
        "A register written anew from its first entry on is sound in itself: only a backup and a checkpoint.json kept "
        + "elsewhere show it (register check --checkpoint FILE).";
}
