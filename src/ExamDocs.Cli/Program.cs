using System.CommandLine;
using ExamDocs.Cli;
using ExamDocs.Cli.Commands;

var root = new RootCommand(
    "Checks what a competent person recorded, determines what may stay in service, and issues the documents. "
        + "Maker's instructions, local law and the competent person's judgement come first."
)
{
    CommonOptions.Register,
    CommonOptions.LanguageTag,
    CommonOptions.Quiet,
};

var doubleClick = DoubleClick.OfThisProcess;
var words = doubleClick.Meaning(args);
foreach (var command in CommandIndex.For(words))
    root.Subcommands.Add(command);
var parsed = root.Parse(words);
var wrong = CommandLineErrors.In(parsed);
if (wrong.Count > 0)
{
    foreach (var mistake in wrong)
        await Console.Error.WriteLineAsync(mistake);
    await Console.Error.WriteLineAsync("Run examdocs --help to see how it is called.");
    return ExitCode.Refused;
}
Screen.Use(parsed);

// Whoever presses Ctrl-C gets the document in hand finished; what takes longer than this is left to the next run to finish.
var code = await parsed.InvokeAsync(new InvocationConfiguration { ProcessTerminationTimeout = TimeSpan.FromSeconds(30) });
doubleClick.WaitUntilRead(code, Console.In, Console.Error);
return code;
