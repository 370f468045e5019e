using System.CommandLine;
using System.Globalization;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Registered;
using NodaTime.Text;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs register</c>: the store.</summary>
internal static class RegisterCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT")
    {
        Description = "Records of earlier visits: workbooks (.xlsx), JSON, .csv files, a folder of workbooks or a folder of .csv files.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<DirectoryInfo> Folder = new("--out")
    {
        Description = "Folder for the files; made where it is missing.",
        HelpName = "DIR",
        Required = true,
    };

    private static readonly Option<FileInfo> Copy = new("--out")
    {
        Description = "The copy to write.",
        HelpName = "FILE",
        Required = true,
    };

    private static readonly Argument<string> Number = new("NUMBER") { Description = "Number of the document, for example R-2026-000123." };

    private static readonly Option<string> Reason = new("--reason")
    {
        Description = "Why it no longer holds; it stays in the log.",
        HelpName = "TEXT",
        Required = true,
    };

    private static readonly Option<bool> DryRun = new("--dry-run")
    {
        Description = "Only list what is held and how long; nothing is ever deleted.",
    };

    public static Command Create()
    {
        var command = new Command("register", "The store: takes in earlier visits, writes everything out, copies, checks.");
        foreach (var one in RegisterPlaceCommands.All.Concat(All))
            command.Add(one);
        return command;
    }

    private static IReadOnlyList<Command> All { get; } =
    [
        Sub(
            "import",
            "Takes earlier visits in, so that they are history to those that follow; issues nothing.",
            [Inputs, CommonOptions.Rules],
            Import
        ),
        Sub("export", "Writes the records, the documents and a list of them as open files.", [Folder], Export),
        Sub("backup", "Writes a whole, checked copy of the register.", [Copy, OutputOptions.Replace], BackUp),
        RegisterCheckCommand.Create(),
        RegisterContentCommand.Create(),
        Sub("withdraw", "Takes back a document that no longer holds. It stays listed, and verify says so.", [Number, Reason], Withdraw),
        Sub("purge", "Lists what personal data is held and how long it has to be kept.", [DryRun, CommonOptions.Rules], Purge),
    ];

    internal static Command Sub(string name, string description, IReadOnlyList<Symbol> symbols, Func<ParseResult, int> run)
    {
        var command = new Command(name, description);
        foreach (var argument in symbols.OfType<Argument>())
            command.Add(argument);
        foreach (var option in symbols.OfType<Option>())
            command.Add(option);
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(run(parsed))));
        return command;
    }

    private static int Import(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || CommonOptions.RegisterToWrite(parsed) is not { } place)
            return ExitCode.Refused;
        var wasThere = place.Exists;
        var result = ImportVisits.Run(parsed.GetRequiredValue(Inputs), place.Place, CommonOptions.Today(), rules);
        CommonOptions.SayWhereMade(parsed, place, wasThere);
        FindingsPrinter.Print(result.Inputs, parsed.GetValue(CommonOptions.Quiet));
        foreach (var remark in result.Remarks)
            Console.Error.WriteLine(remark);
        var code = CheckCommand.ExitOf(result.Inputs);
        if (code != ExitCode.Refused)
            Say(parsed, Screen.Say($"{result.New} visits taken in, {result.Known} known already"));
        return code;
    }

    private static int Export(ParseResult parsed)
    {
        var folder = parsed.GetRequiredValue(Folder);
        if (Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var (records, documents) = ExportRegister.Run(place.Place, folder.ToString(), CommonOptions.Today());
        Say(parsed, string.Create(CultureInfo.InvariantCulture, $"{records} records and {documents} documents in {folder.FullName}"));
        return ExitCode.Done;
    }

    private static int BackUp(ParseResult parsed)
    {
        var copy = parsed.GetRequiredValue(Copy);
        if (Existing(parsed) is not { } place)
            return ExitCode.Refused;
        BackUpRegister.Run(place.Place, copy.ToString(), CommonOptions.Today(), OutputOptions.Guard(parsed, Copy));
        Say(parsed, copy.FullName);
        Say(
            parsed,
            "Keep it away from the register, and beside it a checkpoint.json, which issue and register export write. "
                + RegisterCheckCommand.WhatCheckpointsAreFor
        );
        return ExitCode.Done;
    }

    private static int Withdraw(ParseResult parsed)
    {
        var (number, reason) = (parsed.GetRequiredValue(Number), parsed.GetRequiredValue(Reason));
        if (string.IsNullOrWhiteSpace(reason))
            return Refuse("--reason is empty: say why the document no longer holds");
        if (Existing(parsed) is not { } place)
            return ExitCode.Refused;
        if (WithdrawDocument.Run(place.Place, number, reason.Trim(), CommonOptions.Today()) is { } refused)
            return Refuse(refused);
        Say(parsed, $"{number} is withdrawn: {reason.Trim()}");
        return ExitCode.Done;
    }

    private static int Purge(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        if (!parsed.GetValue(DryRun))
            return Refuse("nothing is ever deleted here: --dry-run lists what is held and how long it has to be kept");
        if (Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var today = CommonOptions.Today();
        foreach (var held in PersonalData.In(place.Place, today, rules))
        {
            var until =
                held.Until is not { } day ? "no day can be given"
                : day < today ? $"had to be kept until {LocalDatePattern.Iso.Format(day)}: may go"
                : $"has to be kept until {LocalDatePattern.Iso.Format(day)}";
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"visit {held.Number} {held.Reference} for {held.Employer}: {until}")
            );
            Console.WriteLine($"  people: {string.Join("; ", held.People)}");
            foreach (var why in held.Why)
                Console.WriteLine($"  {why}");
        }
        Say(parsed, "Nothing was deleted. Accident claims, insurers and contracts may want longer; local law comes first.");
        return ExitCode.Done;
    }

    /// <returns>Null where it is not there, which is then said.</returns>
    internal static RegisterPlace? Existing(ParseResult parsed)
    {
        var place = CommonOptions.Place(parsed);
        foreach (var unused in place.UnusedRegisters("."))
            Console.Error.WriteLine(Screen.Say(unused));
        if (place.Exists)
            return place;
        Refuse(Screen.Say(place.Missing));
        return null;
    }

    internal static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Refused;
    }

    internal static void Say(ParseResult parsed, string what)
    {
        if (!parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(what);
    }
}
