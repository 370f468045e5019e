using System.CommandLine;
using System.Globalization;
using ExamDocs.UseCases.Commands;
using NodaTime.Text;

namespace ExamDocs.Cli.Commands;

/// <summary><c>examdocs work</c>: any number of machines print what was put on one register's list.</summary>
internal static class WorkCommand
{
    private static readonly Option<bool> UntilEmpty = new("--until-empty")
    {
        Description = "End once nothing is left to do. Left out: wait for the next job, until Ctrl-C.",
    };

    private static readonly Argument<int> Number = new("JOB") { Description = "Number of the job, as work list tells it." };

    private static readonly Argument<int?> AnyNumber = new("JOB")
    {
        Description = "Only this job, with all that was said of it.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public static Command Create()
    {
        var command = new Command(
            "work",
            "Prints the jobs on the list of a shared register, beside any number of other machines; the documents are kept in the register."
        )
        {
            UntilEmpty,
            EnqueueCommand.Create(),
            RegisterCommand.Sub("list", "Tells which jobs wait, run, failed or are done, and why.", [AnyNumber], List),
            RegisterCommand.Sub("retry", "Begins a job anew that has failed; what is issued of it is found again.", [Number], Retry),
            RegisterCommand.Sub("cancel", "Takes a job back; what is issued of it stays issued.", [Number], Cancel),
        };
        command.SetAction((parsed, cancellation) => RunGuard.RunAsync(() => RunAsync(parsed, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        RegisterCommand.Say(parsed, $"working at {place.Shown}; Ctrl-C ends it after the documents in hand");
        var untilEmpty = parsed.GetValue(UntilEmpty);
        var did = await DoWork.RunAsync(
            new WorkRequest
            {
                RegisterPath = place.Place,
                Today = CommonOptions.Today,
                UntilEmpty = untilEmpty,
                Told = line => RegisterCommand.Say(parsed, line),
            },
            cancellation
        );
        RegisterCommand.Say(
            parsed,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{did.Documents} documents issued here, in {did.Parts} parts of jobs, and {did.Pages} pages printed for others"
            )
        );
        return did.Held > 0 ? ExitCode.Findings : ExitCode.Done;
    }

    private static int List(ParseResult parsed)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        if (parsed.GetValue(AnyNumber) is not { } number)
        {
            var all = ListWork.All(place.Place);
            foreach (var line in all)
                Print(line, most: line.IsHeld ? 3 : 0);
            RegisterCommand.Say(parsed, string.Create(CultureInfo.InvariantCulture, $"{all.Count} jobs"));
            return ExitCode.Done;
        }
        if (ListWork.Of(place.Place, number) is not { } job)
            return RegisterCommand.Refuse(string.Create(CultureInfo.InvariantCulture, $"there is no job {number}"));
        Print(job, int.MaxValue);
        return ExitCode.Done;
    }

    private static void Print(WorkLine job, int most)
    {
        var at = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm'Z'").Format(job.AskedAt);
        Console.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"job {job.Number}  {job.State}  {job.Title}  asked for by {job.AskedBy}, {at}")
        );
        foreach (var sentence in job.Said.Take(most))
            Console.WriteLine($"  {sentence}");
        if (job.Said.Count > most && most > 0)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  more: examdocs work list {job.Number}"));
    }

    private static int Retry(ParseResult parsed) => Change(parsed, ListWork.Retry, "waits again");

    private static int Cancel(ParseResult parsed) => Change(parsed, ListWork.Cancel, "is taken back");

    private static int Change(ParseResult parsed, Func<string, int, string?> change, string done)
    {
        if (RegisterCommand.Existing(parsed) is not { } place)
            return ExitCode.Refused;
        var number = parsed.GetRequiredValue(Number);
        if (change(place.Place, number) is { } refused)
            return RegisterCommand.Refuse(refused);
        RegisterCommand.Say(parsed, string.Create(CultureInfo.InvariantCulture, $"job {number} {done}"));
        return ExitCode.Done;
    }
}
