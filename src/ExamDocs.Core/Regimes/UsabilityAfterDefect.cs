using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>
/// Whether an employer who was told of a defect may let the equipment be used: regulation 10(3) of SI 1998/2307.
/// </summary>
public static class UsabilityAfterDefect
{
    /// <summary>
    /// True where the defect does not forbid use on a day. A defect that is a danger forbids it until rectified; one that
    /// could become a danger forbids it from the stated day on until rectified.
    /// </summary>
    /// <param name="danger">Null where it was not recorded: taken as a danger now.</param>
    /// <param name="becomesDangerOn">
    /// The stated time. The law forbids use after it; that day itself is left out too, because the last day of use is the
    /// day before. Null where none was stated: taken as a danger now.
    /// </param>
    /// <param name="on">The day of use.</param>
    /// <param name="rectifiedOn">The day it was put right, from which it may be used; null where it was not.</param>
    public static bool MayBeUsed(Danger? danger, LocalDate? becomesDangerOn, LocalDate on, LocalDate? rectifiedOn = null)
    {
        if (rectifiedOn is { } rectified && rectified <= on)
            return true;
        return danger is Danger.Later && becomesDangerOn is { } stated && on < stated;
    }
}
