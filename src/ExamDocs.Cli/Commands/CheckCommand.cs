using System.CommandLine;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs check</c>: reads, checks, determines; issues nothing.</summary>
internal static class CheckCommand
{
    private static readonly Argument<string[]> Inputs = new("INPUT")
    {
        Description = "Records: workbooks (.xlsx), JSON, .csv files, a folder of workbooks or a folder of .csv files.",
        Arity = ArgumentArity.OneOrMore,
    };

    private static readonly Option<FileInfo?> Json = new("--json")
    {
        Description = "Also write outcomes and findings to this file.",
        HelpName = "FILE",
    };

    private static readonly Option<FileInfo?> Annotate = new("--annotate")
    {
        Description = "Also write a copy of the workbook with each finding as a note on its cell, and a list of them all.",
        HelpName = "FILE.xlsx",
    };

    private static readonly Option<bool> All = new("--all")
    {
        Description = "Print every finding with each of its rows, however many lines that takes; else at most forty.",
    };

    public static Command Create()
    {
        var command = new Command("check", "Reads, checks and determines; prints findings and outcomes.")
        {
            Inputs,
            Json,
            Annotate,
            OutputOptions.Replace,
            All,
            CommonOptions.Rules,
        };
        command.SetAction((parsed, _) => RunGuard.RunAsync(() => Task.FromResult(Run(parsed))));
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules)
            return ExitCode.Refused;
        var today = CommonOptions.Today();
        var paths = parsed.GetRequiredValue(Inputs);
        var (file, copy) = (parsed.GetValue(Json)?.ToString(), parsed.GetValue(Annotate)?.ToString());
        if (copy is not null && AnnotateWorkbook.WhyNot(paths) is { } refused)
            return Refuse(refused);
        var outputs = OutputOptions.Guard(parsed, Json, Annotate);
        outputs.Require(file, copy);
        var place = CommonOptions.Place(parsed);
        foreach (var unused in place.UnusedRegisters("."))
            Console.Error.WriteLine(Screen.Say(unused));
        if (place.Objection is { } objection)
            return Refuse(Screen.Say(objection));
        var isThere = place.Exists;
        var inputs = CheckAgainstRegister.All(paths, today, rules, isThere ? place.Place : null);
        if (file is not null)
            FindingsFile.WriteTo(file, outputs, inputs, Screen.Asked(parsed));
        var quiet = parsed.GetValue(CommonOptions.Quiet);
        FindingsPrinter.Print(inputs, quiet, parsed.GetValue(All));
        if (!quiet && !isThere && inputs.Any(i => i.IsRead))
            Console.Error.WriteLine(Screen.Say($"No register was asked for earlier records: {place.Missing}."));
        return copy is null || !inputs[0].IsRead ? ExitOf(inputs) : WriteCopy(inputs[0], copy, outputs, parsed);
    }

    private static int WriteCopy(CheckedInput input, string copy, OutputGuard outputs, ParseResult parsed)
    {
        if (AnnotateWorkbook.Run(input, copy, outputs, Screen.Asked(parsed)) is { } why)
            return Refuse(why);
        if (!parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(Path.GetFullPath(copy));
        return ExitOf([input]);
    }

    private static int Refuse(string why)
    {
        Console.Error.WriteLine(why);
        return ExitCode.Refused;
    }

    internal static int ExitOf(IReadOnlyList<CheckedInput> inputs) =>
        inputs.Any(i => i.Unreadable is not null) ? ExitCode.Refused
        : inputs.Any(i => i.Findings.Any(f => f.Severity is Severity.Error)) ? ExitCode.Findings
        : ExitCode.Done;
}
