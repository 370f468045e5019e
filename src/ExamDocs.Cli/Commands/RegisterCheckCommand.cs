using System.CommandLine;
using System.Text.Encodings.Web;
using System.Text.Json;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs register check</c>: is the register sound?</summary>
internal static class RegisterCheckCommand
{
    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private static readonly Option<string[]> Checkpoints = new("--checkpoint")
    {
        Description = "A checkpoint.json that was kept elsewhere: the log must still begin as it did then. May be given several times.",
        HelpName = "FILE",
        DefaultValueFactory = _ => [],
    };

    private static readonly Option<string?> Since = new("--since")
    {
        Description =
            "A file that an earlier check wrote with --save and that was kept elsewhere: what that check found sound is not looked at "
            + "again, only that the log still begins as it did then. Without it everything is looked at.",
        HelpName = "FILE",
    };

    private static readonly Option<string?> Save = new("--save")
    {
        Description =
            "Writes a file for --since of a later check, where nothing is wrong. Keep it where nobody who can write the register can.",
        HelpName = "FILE",
    };

    private static readonly Option<string?> Json = new("--json") { Description = "Writes what was found as JSON too.", HelpName = "FILE" };

    public static Command Create() =>
        RegisterCommand.Sub(
            "check",
            "Looks for damage, gaps and alterations, and decides every record again.",
            [Checkpoints, Since, Save, OutputOptions.Replace, Json, CommonOptions.Rules],
            Run
        );

    private static int Run(ParseResult parsed)
    {
        var (kept, before) = (ReadCheckpoints.From(parsed.GetValue(Checkpoints) ?? []), ReadCheckpoints.OfCheck(parsed.GetValue(Since)));
        foreach (var fault in kept.Faults.Concat(before.Faults))
            Console.Error.WriteLine(fault);
        if (kept.Faults.Count + before.Faults.Count > 0)
            return ExitCode.Refused;
        if (CommonOptions.KnownRules(parsed) is not { } rules || RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var (save, json, guard) = (
            parsed.GetValue(Save),
            parsed.GetValue(Json),
            OutputOptions.Guard(parsed, Save, Json).For([], place.Place)
        );
        guard.Require(save, json);
        var found = CheckRegister.Run(place.Place, kept, before, rules, CommonOptions.Today());
        if (save is not null && found.File is { } file)
            guard.Write(save, file);
        if (json is not null)
            guard.Write(json, InJson(found));
        Print(found, kept, parsed.GetValue(CommonOptions.Quiet));
        if (save is not null && found.File is null)
            Console.Error.WriteLine($"{save} was not written: something is wrong");
        return found.Faults.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }

    private static byte[] InJson(CheckedRegister found) =>
        JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                format = "examdocs-register-check/1",
                sound = found.Faults.Count == 0,
                found.Faults,
                found.Notes,
                summary = found.Sound,
                found.NotLookedAt,
            },
            Written
        );

    private static void Print(CheckedRegister found, CheckpointsRead kept, bool isQuiet)
    {
        foreach (var sentence in found.Faults)
            Console.WriteLine(sentence);
        if (isQuiet)
            return;
        foreach (var note in found.Notes)
            Console.WriteLine($"note: {note}");
        if (found.Sound is { } sound)
            Console.WriteLine(sound);
        if (found.NotLookedAt is { } left)
            Console.WriteLine(left);
        if (kept.IsEmpty && found.NotLookedAt is null)
            Console.WriteLine($"No checkpoint was given. {WhatCheckpointsAreFor}");
    }

    internal const string WhatCheckpointsAreFor =
        "A register written anew from its first entry on is sound in itself: only a backup and a checkpoint.json kept "
        + "elsewhere show it (register check --checkpoint FILE).";
}
