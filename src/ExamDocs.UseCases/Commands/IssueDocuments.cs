using ExamDocs.Core.Determination;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using ExamDocs.UseCases.Working;

namespace ExamDocs.UseCases.Commands;

/// <summary>The main job: read, check, determine, compose, print, record.</summary>
public static class IssueDocuments
{
    /// <summary>The kinds of document that can be asked for.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. DocumentTypes.All.Select(t => t.Kind)];

    /// <summary>Whom folders can be made for, each with its word.</summary>
    public static IReadOnlyList<(SendTo To, string Word)> Recipients { get; } =
    [.. Enum.GetValues<SendTo>().Select(r => (r, FolderToSend.Word(r)))];

    /// <summary>Longer than a worker takes that has just been started, and does not wait for the end of what it has in hand.</summary>
    private static readonly TimeSpan LongestForAWorker = TimeSpan.FromSeconds(30);

    /// <exception cref="OutputRefusedException">Something in the folder is in the way; nothing was read or issued.</exception>
    /// <exception cref="RegisterRefusedException">The register is none, or of a later version.</exception>
    /// <exception cref="PrintException">No worker prints.</exception>
    /// <exception cref="IOException">The register or the folder cannot be written.</exception>
    public static async Task<IssueResult> RunAsync(IssueRequest request, CancellationToken cancellation = default)
    {
        IssuedInto.Require(request.OutFolder, request.RegisterPath, request.Today);
        var steps = RunSteps.From(RunStage.Reading, request.Progress);
        var read = request.Read ?? ReadVisits.From(request.Inputs, request.Rules, new VisitPhotos());
        if (CheckFirst(read, request) is { } nothing)
            return nothing;
        await using var workers = request.ByWorkers ? PagesByWorkers.Open(request.RegisterPath) : null;
        if (workers is not null)
            await workers.RequireAsync(LongestForAWorker, cancellation);
        await using var run = RegisteredRun.Open(
            request.RegisterPath,
            request.OutFolder,
            request.Today,
            request.Rules,
            request.Reason,
            workers ?? (IPagePrinter?)request.Browser,
            request.Names
        );
        var refused = new List<Refusal>();
        var failure = await run.IssueAsync(
            read,
            (input, ended) => Compose(input, ended, request, refused, steps),
            input => request.Wanted.ComposedOf(input).Jobs.Count(request.Wanted.Wants),
            steps,
            cancellation
        );
        return await RecordAsync(run, [.. refused, .. run.Prints.Refused], failure, request, cancellation);
    }

    /// <summary>A run that reads nothing whole, or has nothing to issue, makes no register.</summary>
    /// <returns>Null where something is to be issued.</returns>
    private static IssueResult? CheckFirst(IReadOnlyList<ReadVisits> read, IssueRequest request)
    {
        var isReadable = read.All(v => v.Unreadable is null);
        if (isReadable && DocumentRegister.Exists(request.RegisterPath))
            return null;
        var inputs = DecideRun.Check(read, null, request.Today, request.Rules);
        if (!isReadable)
            return new IssueResult(inputs, [], [], [], [], null);
        var compositions = inputs.Select(request.Wanted.ComposedOf).ToList();
        return compositions.Exists(c => c.Jobs.Any(request.Wanted.Wants))
            ? null
            : new IssueResult(inputs, [], [.. compositions.SelectMany(c => c.Refused)], [], [], null);
    }

    private static IReadOnlyList<DocumentJob> Compose(
        CheckedInput input,
        EndedLines ended,
        IssueRequest request,
        List<Refusal> refused,
        RunSteps steps
    )
    {
        var composition = request.Wanted.ComposedOf(input);
        List<Refusal> here = [.. composition.Refused, .. ended.Refused];
        refused.AddRange(here);
        steps.Refuse(here.Count);
        return [.. request.Wanted.Of(composition, ended)];
    }

    private static async Task<IssueResult> RecordAsync(
        RegisteredRun run,
        IReadOnlyList<Refusal> refused,
        string? failure,
        IssueRequest request,
        CancellationToken cancellation
    )
    {
        if (failure is null && request.Only.Count == 0)
            await run.TakeBackAsync();
        var replaced = IssuedInto.Leave(run, request.OutFolder, refused);
        CheckpointBeside.Write(run.Register, request.OutFolder, request.Today, request.Style.Signer);
        var (toSend, unsent) = failure is null ? await FoldersToSendAsync(run, request, cancellation) : ([], null);
        return new IssueResult(
            run.Inputs,
            run.Prints.Documents,
            refused,
            [.. run.Remarks, .. replaced],
            run.Prints.Unprintable,
            failure ?? unsent
        )
        {
            ToSend = toSend,
        };
    }

    /// <returns>What was made, and why it stopped before the last folder; null where it did not.</returns>
    private static async Task<(IReadOnlyList<string> Made, string? Failure)> FoldersToSendAsync(
        RegisteredRun run,
        IssueRequest request,
        CancellationToken cancellation
    )
    {
        var made = new List<string>();
        var folders = new FolderToSend(run, request.OutFolder, request.Style, request.Today);
        try
        {
            foreach (var visit in run.Inputs.Select(i => i.Visit!))
            {
                foreach (var to in request.For.Distinct())
                    made.Add(await folders.MakeAsync(visit, to, cancellation));
            }
            return (made, null);
        }
        catch (Exception e) when (RunFailure.Is(e) && e is not InvalidDataException)
        {
            return (made, RunFailure.Sentence(e));
        }
    }
}
