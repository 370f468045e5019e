using ExamDocs.Core.Findings;
using ExamDocs.Documents.Browsing;
using ExamDocs.Register.Work;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Working;

/// <summary>
/// A worker's run over the register for one job. It reads and decides the job once, as <c>issue</c> does, and then prints parts of it, one
/// after the other.
/// </summary>
internal sealed class JobSession : IAsyncDisposable
{
    /// <summary>Most findings that the list of jobs tells; <c>check</c> tells all.</summary>
    private const int MostFindings = 40;

    private readonly SharedWork _work;
    private readonly Job _job;
    private readonly JobInputs _inputs;
    private readonly RegisteredRun _run;
    private readonly Dictionary<int, (CheckedInput Input, Composition Composition)> _named = [];
    private readonly HashSet<int> _knows = [];
    private readonly JobVersions _versions;
    private DecideRun? _decided;
    private DecidedJob? _stored;

    private JobSession(SharedWork work, Job job, JobInputs inputs, RegisteredRun run) =>
        (_work, _job, _inputs, _run, _versions) = (work, job, inputs, run, new(work, job, inputs.Read, run.Register));

    /// <param name="work">Where the job is.</param>
    /// <param name="number">Number of the job.</param>
    /// <param name="place">The register.</param>
    /// <param name="browser">Stays open.</param>
    /// <exception cref="JobRefusedException">The job cannot be issued as it was given.</exception>
    public static JobSession Open(SharedWork work, int number, string place, Browser browser)
    {
        var job = work.Find(number) ?? throw new JobRefusedException("it is no longer there");
        var options = JobOptions.Read(job.Options);
        var inputs = JobInputs.Of(options, FilesOf(work, number));
        try
        {
            return new(work, job, inputs, RegisteredRun.Open(place, null, job.AsOf, inputs.Rules, options.Reason, browser));
        }
        catch
        {
            inputs.Dispose();
            throw;
        }
    }

    private static IReadOnlyList<JobFile> FilesOf(SharedWork work, int number)
    {
        try
        {
            return work.Files(number);
        }
        catch (InvalidDataException altered)
        {
            throw new JobRefusedException(altered.Message, altered);
        }
    }

    /// <summary>What stopped the last part; null where nothing did.</summary>
    public Exception? StoppedBy => _run.Prints.StoppedBy;

    /// <summary>Decides the visits, remembers them, and says into which parts the rest is divided.</summary>
    /// <exception cref="JobRefusedException">Another version of a visit was recorded since the job was asked for.</exception>
    public (DecidedJob Decided, IReadOnlyList<JobPart> Parts, string Said) Decide()
    {
        _versions.RequireNoneSince();
        var decided = _decided = _run.Remember(_inputs.Read);
        var order = decided.InOrder().ToList();
        _stored = new([.. decided.Numbers.Select(n => n.Visit)], order, decided.Seen);
        var composed = decided.Inputs.Select(_inputs.Wanted.ComposedOf).ToList();
        var parts = JobStages.Parts(
            _job.Number,
            [.. order.Select(place => (IReadOnlyList<DocumentJob>)[.. composed[place].Jobs.Where(_inputs.Wanted.Wants)])]
        );
        var refused = composed.SelectMany(c => c.Refused).Select(JobRefusal.Sentence);
        return (_stored, parts, Lines([.. _run.Remarks, .. decided.Inputs.SelectMany(Findings), .. refused]));
    }

    /// <summary>Prints a part, or ends the job.</summary>
    /// <returns>What came of it; or why it stopped before the end.</returns>
    /// <exception cref="JobRefusedException">A later version of a visit was recorded meanwhile.</exception>
    public async Task<(PartResult? Result, string? Failure)> DoAsync(ClaimedPart claimed, CancellationToken cancellation)
    {
        var stored = _stored ??= _job.Decided ?? throw new JobRefusedException("it is not decided");
        if (stored.Visits.Count != _inputs.Read.Count || stored.Order.Count != stored.Visits.Count)
            throw new JobRefusedException("its visits are no longer those that were decided");
        _decided ??= _versions.DecidedAgain(_run, stored);
        _versions.RequireLatest(stored);
        // What a worker left that was killed at this very part would keep its documents from being begun.
        var remarks = _run.Remarks.Count;
        IReadOnlyList<string> left = claimed.Attempts > 1 ? _run.Register.Recover() : [];
        return claimed.Part.Stage == JobStages.Last(stored.Visits.Count)
            ? (await EndAsync(stored, remarks), null)
            : await PrintAsync(claimed, stored, left, cancellation);
    }

    private async Task<(PartResult? Result, string? Failure)> PrintAsync(
        ClaimedPart claimed,
        DecidedJob stored,
        IReadOnlyList<string> left,
        CancellationToken cancellation
    )
    {
        var part = claimed.Part;
        var place = stored.Order[JobStages.Printed(part.Stage).Visit];
        var (input, composition) = Named(place);
        var ended = LaterFindings.Ended(_run.Register, stored.Visits[place], input.Visit!);
        var (prints, stage) = (_run.Prints, JobStages.Printed(part.Stage).Stage);
        if (stage is PrintStage.DueLabels && _knows.Add(part.Stage))
            prints.Know(JobRefusal.Read(_work.RefusedBefore(part.Job, part.Stage)));
        var before = (prints.Documents.Count, prints.Refused.Count, prints.Unprintable.Count, prints.Remarks.Count);
        var jobs = _inputs.Wanted.Of(composition, ended).Where(j => JobStages.IsIn(j, part)).ToList();
        prints.JobDone = OnFirstIssued(before.Item1, () => _work.Advance(claimed));
        if (await _run.PrintAsync(jobs, cancellation) is { } failure)
            return (null, failure);
        var documents = prints.Documents.Skip(before.Item1).ToList();
        var refused = prints.Refused.Skip(before.Item2).ToList();
        return (
            new PartResult(
                [.. documents.Select(d => d.Number)],
                documents.Count(d => !d.IssuedNow),
                JobRefusal.ToJson(refused),
                Lines([
                    .. left,
                    .. prints.Remarks.Skip(before.Item4),
                    .. prints.Unprintable.Skip(before.Item3),
                    .. refused.Concat(stage is PrintStage.Documents ? ended.Refused : []).Select(JobRefusal.Sentence),
                ])
            ),
            null
        );
    }

    private Action OnFirstIssued(int before, Action advance)
    {
        var isTold = false;
        return () =>
        {
            if (isTold || !_run.Prints.Documents.Skip(before).Any(d => d.IssuedNow))
                return;
            isTold = true;
            advance();
        };
    }

    private async Task<PartResult> EndAsync(DecidedJob stored, int remarks)
    {
        if (_inputs.Wanted.Only.Count == 0)
        {
            foreach (var place in stored.Order)
                Named(place);
            await _run.TakeBackAsync(_work.DocumentsOf(_job.Number));
        }
        return new PartResult([], 0, "[]", Lines([.. _run.Remarks.Skip(remarks)]));
    }

    /// <summary>Decided once more when it is first printed: it names the documents of the visits before it, which are out now.</summary>
    private (CheckedInput Input, Composition Composition) Named(int place)
    {
        if (!_named.TryGetValue(place, out var named))
        {
            var input = _run.Name(_decided!, place);
            _named[place] = named = (input, _inputs.Wanted.ComposedOf(input));
        }
        return named;
    }

    private IEnumerable<string> Findings(CheckedInput input)
    {
        var told = input.Told();
        return told.OrderByDescending(g => g.First.Severity)
            .Take(MostFindings)
            .Select(g => $"{g.First.Code} {g.First.Severity.Said()}: {g.First.Message}")
            .Concat(told.Count > MostFindings ? ["there are more findings: examdocs check tells them all"] : []);
    }

    private string Lines(IEnumerable<string> sentences) =>
        string.Join('\n', sentences.Select(s => _inputs.Shown(s).ReplaceLineEndings(" ")).Distinct(StringComparer.Ordinal));

    public async ValueTask DisposeAsync()
    {
        await _run.DisposeAsync();
        _inputs.Dispose();
    }
}
