namespace ExamDocs.Core.Statistics;

/// <summary>How long one thing was watched, and whether the event ended it; where not, it is censored at that time.</summary>
public sealed record Lifetime
{
    /// <param name="time">When the event came, or until when it was watched; not negative.</param>
    /// <param name="isEvent">True where the event came at that time.</param>
    /// <param name="entry">
    /// The age from which it was watched: at that age and before, nobody would know of its event. 0 where it was watched from the start.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A time is negative or no number, or watching began after it ended.</exception>
    public Lifetime(double time, bool isEvent, double entry = 0)
    {
        if (!double.IsFinite(time) || !double.IsFinite(entry))
            throw new ArgumentOutOfRangeException(nameof(time), "a time must be a finite number");
        ArgumentOutOfRangeException.ThrowIfNegative(entry);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(entry, time);
        (Time, IsEvent, Entry) = (time, isEvent, entry);
    }

    public double Time { get; }

    public bool IsEvent { get; }

    public double Entry { get; }

    /// <summary>
    /// True where its event would be known if it came at this age. One that is censored at an age counts as at risk there; one watched
    /// from the start also at age 0.
    /// </summary>
    internal bool IsAtRiskAt(double age) => (Entry < age || Entry == 0) && age <= Time;
}
