using System.CommandLine;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using NodaTime.Text;

namespace ExamDocs.Cli.Commands;

/// <summary>The commands of <c>examdocs register</c> that are about registers themselves: make, find, bring up to date, join.</summary>
internal static class RegisterPlaceCommands
{
    private static readonly Argument<string> Other = new("OTHER")
    {
        Description = "The register to take in: a file, or postgres://user@server/database. It is not changed.",
    };

    public static IReadOnlyList<Command> All { get; } =
    [
        RegisterCommand.Sub("create", "Makes a register where there is none.", [], Make),
        RegisterCommand.Sub("where", "Tells which register is used, and why.", [], Where),
        RegisterCommand.Sub(
            "update",
            "Brings a register of an earlier version up to date; one in a file is brought up to date by any command that writes it.",
            [],
            Update
        ),
        RegisterCommand.Sub("merge", "Takes the visits and documents of another register into this one.", [Other], Merge),
    ];

    private static int Update(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        RegisterCommand.Say(parsed, $"{UpdateRegister.Run(place.Place, CommonOptions.Today())} is up to date");
        return ExitCode.Done;
    }

    private static int Make(ParseResult parsed)
    {
        var place = CommonOptions.Place(parsed);
        if (place.Exists)
            return RegisterCommand.Refuse($"there is a register, or another file, at {place.Shown} already; it was left as it is");
        var register = RegisterFacts.Create(place.Place, CommonOptions.Today());
        RegisterCommand.Say(parsed, $"{register.Place} is made; its numbering starts at 1. Identity: {register.Identity}");
        return ExitCode.Done;
    }

    private static int Where(ParseResult parsed)
    {
        var place = CommonOptions.Place(parsed);
        if (!place.Exists)
        {
            Console.WriteLine(place.Shown);
            return place.NamedBy is null ? Say(parsed, Screen.Say(place.Missing)) : RegisterCommand.Refuse(Screen.Say(place.Missing));
        }
        var register = RegisterFacts.Read(place.Place, CommonOptions.Today());
        Console.WriteLine(register.Place);
        RegisterCommand.Say(
            parsed,
            $"named by {place.NamedBy ?? "nobody: the usual place"}; kept since "
                + $"{LocalDatePattern.Iso.Format(register.KeptSince)}; identity {register.Identity}"
        );
        foreach (var unused in place.UnusedRegisters("."))
            Console.Error.WriteLine(Screen.Say(unused));
        return ExitCode.Done;
    }

    private static int Say(ParseResult parsed, string what)
    {
        RegisterCommand.Say(parsed, what);
        return ExitCode.Done;
    }

    private static int Merge(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var other = new RegisterPlace(parsed.GetRequiredValue(Other), "OTHER");
        if (!other.Exists)
            return RegisterCommand.Refuse($"there is no register at {other.Shown}");
        var result = MergeRegisters.Run(place.Place, other.Place, CommonOptions.Today());
        foreach (var refused in result.Refused)
            Console.Error.WriteLine(refused);
        foreach (var remark in parsed.GetValue(CommonOptions.Quiet) ? [] : result.Remarks)
            Console.Error.WriteLine(remark);
        RegisterCommand.Say(parsed, result.Summary);
        return result.Refused.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }
}
