using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Cli.Progress;

/// <summary>Notes when each stage of a run began, and says how far the run is and where its time went.</summary>
internal sealed class RunClock(TimeProvider time)
{
    private readonly long _start = time.GetTimestamp();
    private readonly List<(RunStage Stage, long Began)> _stages = [];
    private RunProgress? _counted;
    private TimeSpan _countedFor;

    /// <summary>Takes what a run tells of itself.</summary>
    /// <returns>It in words, with the speed and the time left where they can be told.</returns>
    public Message Note(RunProgress progress)
    {
        if (_stages is not [.., var last] || last.Stage != progress.Stage)
            _stages.Add((progress.Stage, time.GetTimestamp()));
        var since = time.GetElapsedTime(_stages[^1].Began);
        if (progress.Done > 0)
            (_counted, _countedFor) = (progress, since);
        return WithSpeed(progress, since, progress.Done < progress.Of);
    }

    /// <summary>How many were done how fast, and where the time went: a line each.</summary>
    /// <param name="last">What was said last, and need not be said again; null for nothing.</param>
    public IEnumerable<Message> Summary(Message? last = null)
    {
        if (_counted is { } counted && WithSpeed(counted, _countedFor, isUnderWay: false) is var done && !done.Equals(last))
            yield return done;
        var ends = _stages.Skip(1).Select(s => s.Began).Append(time.GetTimestamp());
        var parts = _stages.Zip(ends, (s, end) =>
            Message.Join(" ", RunProgress.StageIs(s.Stage), Length(time.GetElapsedTime(s.Began, end)))
        );
        yield return $"took {Length(time.GetElapsedTime(_start))}: {Message.Join(", ", parts)}";
    }

    private static Message WithSpeed(RunProgress progress, TimeSpan since, bool isUnderWay)
    {
        if (progress.Done == 0 || since <= TimeSpan.Zero)
            return progress.Said;
        var speed = Tenths(progress.Done / since.TotalSeconds);
        return isUnderWay
            ? $"{progress.Said}; {speed} a second, {Length(since / progress.Done * (progress.Of - progress.Done))} left"
            : (Message)$"{progress.Said}; {speed} a second";
    }

    /// <summary>With the signs of units that every language has.</summary>
    private static Message Length(TimeSpan length) =>
        length.TotalSeconds < 9.95 ? $"{Tenths(length.TotalSeconds)} s"
        : length.TotalSeconds < 59.5 ? $"{Math.Round(length.TotalSeconds)} s"
        : length.TotalMinutes < 60 ? $"{(int)length.TotalMinutes} min {length.Seconds} s"
        : (Message)$"{(int)length.TotalHours} h {length.Minutes} min";

    private static decimal Tenths(double number) => decimal.Round((decimal)number, 1);
}
