using NodaTime;

namespace ExamDocs.Core.Calendar;

/// <summary>What has to be kept under regulation 11 of SI 1998/2307 (Great Britain).</summary>
public enum KeptDocument
{
    /// <summary>The maker's declaration of conformity: reg 11(1).</summary>
    DeclarationOfConformity,

    /// <summary>Report before first service, reg 9(1), of anything but an accessory: reg 11(2)(a)(i).</summary>
    ReportBeforeFirstService,

    /// <summary>Report before first service, reg 9(1), of an accessory for lifting: reg 11(2)(a)(ii).</summary>
    ReportBeforeFirstServiceOfAccessory,

    /// <summary>Report after installation or assembly at a new site, reg 9(2): reg 11(2)(a)(iii).</summary>
    ReportAfterInstallation,

    /// <summary>Periodic, scheme or exceptional report, reg 9(3): reg 11(2)(a)(iv).</summary>
    PeriodicReport,

    /// <summary>Record of an inspection between examinations, reg 10(2): reg 11(2)(b).</summary>
    InspectionRecord,
}

/// <summary>How long a document is to be kept.</summary>
/// <param name="Until">The last day it has to be kept, inclusive; null where it hangs on an event still to come.</param>
/// <param name="Words">The whole rule in words, ready to be printed.</param>
/// <param name="Source">The provision.</param>
public sealed record KeepUntil(LocalDate? Until, string Words, string Source)
{
    /// <summary>A day, inclusive, that it has to be kept to whatever comes; null where the law sets none.</summary>
    public LocalDate? AtLeastUntil { get; init; }
}

/// <summary>Keeping of documents under regulation 11 of SI 1998/2307, read as revised at 31 December 2020.</summary>
public static class Retention
{
    /// <summary>How long to keep a document.</summary>
    /// <param name="document">What it is.</param>
    /// <param name="madeOn">Date of the document.</param>
    /// <param name="nextMadeOn">
    /// Date of the next report under reg 9(3), or of the next inspection record; null where there is none yet. Of no
    /// account for the other documents.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The next one is dated before this one.</exception>
    public static KeepUntil Of(KeptDocument document, LocalDate madeOn, LocalDate? nextMadeOn = null)
    {
        if (nextMadeOn is { } next && next < madeOn)
            throw new ArgumentOutOfRangeException(nameof(nextMadeOn), "The next document is dated before this one.");
        return document switch
        {
            KeptDocument.DeclarationOfConformity => new(null, "as long as the equipment is operated", Reg("11(1)")),
            KeptDocument.ReportBeforeFirstService =>
                new(null, "until the employer stops using the equipment", Reg("11(2)(a)(i)")),
            KeptDocument.ReportBeforeFirstServiceOfAccessory =>
                new(TwoYears(madeOn), "two years after the report is made", Reg("11(2)(a)(ii)")),
            KeptDocument.ReportAfterInstallation =>
                new(null, "until the equipment is no longer used at the place where it was installed or assembled", Reg("11(2)(a)(iii)")),
            KeptDocument.PeriodicReport => Periodic(madeOn, nextMadeOn),
            KeptDocument.InspectionRecord => new(nextMadeOn, "until the next such record is made", Reg("11(2)(b)")),
            _ => throw new ArgumentOutOfRangeException(nameof(document)),
        };
    }

    private static KeepUntil Periodic(LocalDate madeOn, LocalDate? nextMadeOn) => new(
        nextMadeOn is { } next ? LocalDate.Max(next, TwoYears(madeOn)) : null,
        "until the next periodic report is made, and for two years at least",
        // The text does not say from when the two years run; the date of the report is the reading taken here.
        Reg("11(2)(a)(iv)"))
    {
        AtLeastUntil = TwoYears(madeOn),
    };

    private static LocalDate TwoYears(LocalDate madeOn) => CorrespondingDate.AddYears(madeOn, 2);

    private static string Reg(string provision) => $"SI 1998/2307 reg {provision}";
}
