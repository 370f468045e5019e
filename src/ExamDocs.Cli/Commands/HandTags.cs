using System.CommandLine;
using System.CommandLine.Parsing;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs label --by-hand</c>: tags to fill in by hand.</summary>
internal static class HandTags
{
    public static readonly Option<int?> ByHand = new("--by-hand")
    {
        Description =
            "So many tags that say not to use an item, with lines to fill in by hand, for kit that is found before anything is "
            + "recorded. They are no issued documents and have no number.",
        HelpName = "N",
    };

    public static async Task<int> RunAsync(ParseResult parsed, int count, PrintStyle style, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(LabelCommand.Out);
        var objection = await PrintHandTags.RunAsync(
            new HandTagRequest
            {
                Count = count,
                OutFile = file.ToString(),
                Outputs = OutputOptions.Guard(parsed, LabelCommand.Out),
                Stock = parsed.GetValue(LabelCommand.Stock),
                Start = parsed.GetValue(LabelCommand.Start),
                OffsetMm = parsed.GetValue(LabelCommand.Offset),
                CropMarks = parsed.GetValue(LabelCommand.CropMarks),
                BlackOnly = parsed.GetValue(LabelCommand.Black),
                Style = style,
            },
            cancellation
        );
        if (objection is null && !parsed.GetValue(CommonOptions.Quiet))
            Console.WriteLine(file.FullName);
        if (objection is not null)
            await Console.Error.WriteLineAsync(objection);
        return objection is null ? ExitCode.Done : ExitCode.Refused;
    }

    public static void CheckWhat(CommandResult command)
    {
        var (named, byHand) = (command.GetResult(LabelCommand.Inputs) is { Tokens.Count: > 0 }, command.GetResult(ByHand) is not null);
        if (named && byHand)
            command.AddError("--by-hand prints tags without any record or number: leave those out");
        else if (!named && !byHand)
            command.AddError("label needs a record or the number of a label, or --by-hand N for tags to fill in by hand");
        else if (byHand && command.GetResult(LabelCommand.Only) is not null)
            command.AddError("--by-hand prints tags of one kind: leave out --only");
    }
}
