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
    CheckCommand.Create(),
    IssueCommand.Create(),
    LabelCommand.Create(),
    BlankCommand.Create(),
    AdoptCommand.Create(),
    VerifyCommand.Create(),
    FindCommand.Create(),
    DueCommand.Create(),
    RecallCommand.Create(),
    SparesCommand.Create(),
    TeachCommand.Create(),
    PackCommand.Create(),
    RegisterCommand.Create(),
    ModelsCommand.Create(),
    CriteriaCommand.Create(),
    RulesCommand.Create(),
    WorkbenchCommand.Create(),
};

var doubleClick = DoubleClick.OfThisProcess;
var parsed = root.Parse(doubleClick.Meaning(args));
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
