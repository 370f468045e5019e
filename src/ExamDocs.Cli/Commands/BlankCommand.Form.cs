using System.CommandLine;
using System.CommandLine.Parsing;

namespace ExamDocs.Cli.Commands;

/// <content>The form for the yard.</content>
internal static partial class BlankCommand
{
    private static readonly Option<FileInfo?> Form = new("--form")
    {
        Description =
            "The form to write instead of a workbook (.html): one file that records the visit on a phone, offline, and saves it as JSON.",
        HelpName = "FILE.html",
    };

    private static void CheckForm(CommandResult command)
    {
        var isForm = command.GetResult(Form) is not null;
        if (isForm == command.GetResult(Out) is not null)
            command.AddError("name what is to be written: a workbook or check sheets with --out, or a form with --form");
        if (isForm && command.GetResult(Form) is { Tokens: [var typed, ..] } && !IsHtml(typed.Value))
            command.AddError($"a form is a web page: name it with .html at the end, not {typed.Value}");
        if (isForm && command.GetValue(Answers))
            command.AddError("--answers fills in a workbook; in a form nothing is answered beforehand");
    }

    private static bool IsHtml(string file) => string.Equals(Path.GetExtension(file), ".html", StringComparison.OrdinalIgnoreCase);
}
