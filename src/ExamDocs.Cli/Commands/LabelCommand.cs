using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ExamDocs.Cli.Progress;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs label</c>: labels on a stock.</summary>
internal static class LabelCommand
{
    internal static readonly Argument<string[]> Inputs = new("INPUT|NUMBER")
    {
        Description = "Records, or numbers of labels already issued, typed or scanned from their code.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    internal static readonly Option<FileInfo> Out = new("--out")
    {
        Description = "The sheet to write (.pdf). The register keeps the single labels.",
        HelpName = "FILE",
        Required = true,
    };

    internal static readonly Option<LabelStockRead?> Stock = new("--stock")
    {
        Description =
            "What is printed on, or a .json file of your own that says so: "
            + $"{string.Join("; ", ReadLabelStock.Known.Select(s => $"{s.Name} ({s.What})"))}. "
            + $"Default: {string.Join(", ", PrintLabels.Kinds.Select(k => $"{k.UsualStock} for {k.Kind}"))}.",
        HelpName = "NAME|FILE",
        CustomParser = ParseStock,
    };

    internal static readonly Option<string?> Only = new("--only")
    {
        Description =
            $"Labels of this kind: {string.Join(", ", PrintLabels.Kinds.Select(k => k.Kind))}. Default: those that the "
            + "stock is for, else quarantine-label.",
        HelpName = "KIND",
    };

    internal static readonly Option<int> Start = new("--start")
    {
        Description = "First place used on the first sheet.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    internal static readonly Option<(double X, double Y)> Offset = new("--offset")
    {
        Description = "How far the printer is off, millimetres to the right and down.",
        HelpName = "X,Y",
        CustomParser = ParseOffset,
    };

    internal static readonly Option<bool> CropMarks = new("--crop-marks")
    {
        Description = "Fine lines in the margins that show where to cut.",
    };

    internal static readonly Option<bool> Black = new("--black")
    {
        Description = "Solid black and white alone, for thermal printers; the prohibition sign is then black too.",
    };

    static LabelCommand() => Only.AcceptOnlyFromAmong([.. PrintLabels.Kinds.Select(k => k.Kind)]);

    public static Command Create()
    {
        var command = new Command("label", "Prints labels onto a stock: for what may not be used, or for what is to be examined next.")
        {
            Inputs,
            Out,
            OutputOptions.Replace,
            Stock,
            Only,
            Start,
            Offset,
            CropMarks,
            Black,
            HandTags.ByHand,
            CommonOptions.Letterhead,
            CommonOptions.Rules,
        };
        command.Validators.Add(HandTags.CheckWhat);
        ReadingOptions.AddTo(command);
        SigningOptions.AddTo(command);
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (CommonOptions.KnownRules(parsed) is not { } rules || CommonOptions.PrintStyle(parsed) is not { } style)
            return ExitCode.Refused;
        if (parsed.GetValue(HandTags.ByHand) is { } count)
            return await HandTags.RunAsync(parsed, count, style, cancellation);
        var (file, outputs) = (parsed.GetRequiredValue(Out), OutputOptions.Guard(parsed, Out));
        outputs.Require(file.ToString());
        if (CommonOptions.RegisterToWrite(parsed, file.DirectoryName) is not { } register)
            return ExitCode.Refused;
        var wasThere = register.Exists;
        var request = new LabelRequest
        {
            InputsOrNumbers = parsed.GetValue(Inputs) ?? [],
            OutFile = file.ToString(),
            Outputs = outputs,
            RegisterPath = register.Place,
            Stock = parsed.GetValue(Stock),
            Kind = parsed.GetValue(Only),
            Start = parsed.GetValue(Start),
            OffsetMm = parsed.GetValue(Offset),
            CropMarks = parsed.GetValue(CropMarks),
            BlackOnly = parsed.GetValue(Black),
            Today = CommonOptions.Today(),
            Style = style,
            Rules = rules,
        };
        var result = await ProgressScreen.ShowAsync(parsed, told => PrintLabels.RunAsync(request with { Progress = told }, cancellation));
        CommonOptions.SayWhereMade(parsed, register, wasThere);
        FindingsPrinter.Print(result.Inputs, quiet: true);
        foreach (var sentence in result.Unprintable.Concat(parsed.GetValue(CommonOptions.Quiet) ? [] : result.Remarks))
            await Console.Error.WriteLineAsync(sentence);
        if ((result.Refused ?? result.Failure) is { } stopped)
        {
            await Console.Error.WriteLineAsync(stopped is RunFailure.ByUser ? Screen.Say(RunGuard.ByUser) : stopped);
            return result.Refused is null ? ExitCode.Stopped : ExitCode.Refused;
        }
        if (!parsed.GetValue(CommonOptions.Quiet))
        {
            foreach (var label in result.Labels)
                Console.WriteLine(
                    $"{label.Number}  {string.Join(", ", label.Items)}{(label.IssuedNow ? "" : Screen.Say($"  (issued before)"))}"
                );
            Console.WriteLine(result.Labels.Count == 0 ? Screen.Say($"nothing to label") : file.FullName);
        }
        return result.Unprintable.Count > 0
            ? Math.Max(ExitCode.Findings, CheckCommand.ExitOf(result.Inputs))
            : CheckCommand.ExitOf(result.Inputs);
    }

    private static LabelStockRead? ParseStock(ArgumentResult argument)
    {
        var read = ReadLabelStock.From(argument.Tokens[0].Value);
        foreach (var fault in read.Faults)
            argument.AddError(fault);
        return read.Faults.Count == 0 ? read : null;
    }

    private static (double X, double Y) ParseOffset(ArgumentResult argument)
    {
        var parts = argument.Tokens[0].Value.Split(',');
        if (parts.Length == 2 && Millimetres(parts[0]) is { } x && Millimetres(parts[1]) is { } y)
            return (x, y);
        argument.AddError("--offset takes two numbers of millimetres with a comma between, for example 1.5,-0.5");
        return default;
    }

    private static double? Millimetres(string text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var mm)
        && Math.Abs(mm) <= 100
            ? mm
            : null;
}
