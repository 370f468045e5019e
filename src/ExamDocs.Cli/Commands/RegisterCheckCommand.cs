using System.CommandLine;
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
        var kept = ReadCheckpoints.From(parsed.GetValue(Checkpoints) ?? []);
        foreach (var fault in kept.Faults)
            Console.Error.WriteLine(fault);
        if (kept.Faults.Count > 0)
            return ExitCode.Refused;
        if (CommonOptions.KnownRules(parsed) is not { } rules || RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var found = CheckRegister.Run(place.Place, kept, rules, CommonOptions.Today());
        foreach (var sentence in found.Faults)
            Console.WriteLine(sentence);
        if (!parsed.GetValue(CommonOptions.Quiet))
            Print(found, kept);
        return found.Faults.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }

    private static void Print(CheckedRegister found, CheckpointsRead kept)
    {
        foreach (var note in found.Notes)
            Console.WriteLine($"note: {note}");
        if (found.Sound is { } sound)
            Console.WriteLine(sound);
        if (kept.IsEmpty)
            Console.WriteLine($"No checkpoint was given. {WhatCheckpointsAreFor}");
    }

    internal const string WhatCheckpointsAreFor =
        "A register written anew from its first entry on is sound in itself: only a backup and a checkpoint.json kept "
        + "elsewhere show it (register check --checkpoint FILE).";
}
