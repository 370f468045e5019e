using System.CommandLine;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs register content</c>: where are the documents kept?</summary>
internal static class RegisterContentCommand
{
    private static readonly Option<string?> To = new("--to")
    {
        Description =
            "Moves them all there: database (the register itself), folder:PATH, or s3://bucket/prefix?endpoint=https://host. Other runs "
            + "may go on; a move that was stopped is finished by running it again.",
        HelpName = "PLACE",
    };

    public static Command Create() =>
        RegisterCommand.Sub(
            "content",
            "Tells where the bytes of documents are kept, or moves them elsewhere.",
            [To, CommonOptions.Rules],
            Run
        );

    private static int Run(ParseResult parsed)
    {
        var to = parsed.GetValue(To);
        if (to is not null && string.IsNullOrWhiteSpace(to))
            return RegisterCommand.Refuse("--to is empty: name database, folder:PATH or s3://bucket/prefix");
        if (CommonOptions.KnownRules(parsed) is not { } rules || RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        if (to is null)
        {
            Console.WriteLine(MoveContent.Where(place.Place, CommonOptions.Today()));
            return ExitCode.Done;
        }
        var moved = MoveContent.Run(place.Place, to, CommonOptions.Today(), rules);
        foreach (var fault in moved.Faults)
            Console.WriteLine(fault);
        foreach (var remark in moved.Remarks)
            Console.Error.WriteLine(remark);
        RegisterCommand.Say(parsed, moved.Summary);
        return moved.Faults.Count == 0 ? ExitCode.Done : ExitCode.Findings;
    }
}
