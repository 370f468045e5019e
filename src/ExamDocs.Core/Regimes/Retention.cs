using ExamDocs.Core.Calendar;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Regimes;

/// <summary>What has to be kept.</summary>
public enum KeptDocument
{
    /// <summary>The maker's declaration of conformity.</summary>
    DeclarationOfConformity,

    /// <summary>Report before first service of anything but an accessory.</summary>
    ReportBeforeFirstService,

    /// <summary>Report before first service of an accessory for lifting.</summary>
    ReportBeforeFirstServiceOfAccessory,

    /// <summary>Report after installation or assembly at a new site.</summary>
    ReportAfterInstallation,

    /// <summary>Periodic, scheme or exceptional report.</summary>
    PeriodicReport,

    /// <summary>Record of an inspection between examinations.</summary>
    InspectionRecord,
}

/// <summary>How long a document is to be kept.</summary>
/// <param name="Until">The last day it has to be kept, inclusive; null where that depends on an event still to come.</param>
/// <param name="Words">The whole rule in words, ready to be printed.</param>
/// <param name="Source">The provision.</param>
/// <param name="Confidence">How surely it is known.</param>
public sealed record KeepUntil(LocalDate? Until, string Words, string Source, Confidence Confidence)
{
    /// <summary>The day until which it has to be kept in any event, inclusive; null where the law sets none.</summary>
    public LocalDate? AtLeastUntil { get; init; }

    /// <summary>False where no source says how long: <see cref="Words"/> then says just that.</summary>
    public bool IsKnown { get; init; } = true;
}

/// <summary>How long documents of some kinds have to be kept under a regime.</summary>
public sealed record RetentionRule
{
    public required IReadOnlyList<KeptDocument> Documents { get; init; }

    /// <summary>The whole rule in words, as printed after "keep it".</summary>
    public required string Words { get; init; }

    /// <summary>Years from the date of the document; null where the law sets none.</summary>
    public int? Years { get; init; }

    /// <summary>True where it is kept until the next document of its kind is made; if there are years too, the later day counts.</summary>
    public bool UntilNext { get; init; }

    /// <summary>How many of the latest are always kept, however old; null where the law sets none.</summary>
    public int? Last { get; init; }

    /// <summary>True where no source says how long.</summary>
    public bool NotFound { get; init; }

    public required string Source { get; init; }

    public required Confidence Confidence { get; init; }

    /// <param name="madeOn">Date of the document. The law does not always say from when its years count; here they count from this
    /// day.</param>
    /// <param name="nextMadeOn">Date of the next document of its kind; null where there is none yet.</param>
    /// <exception cref="ArgumentOutOfRangeException">The next one is dated before this one.</exception>
    public KeepUntil Of(LocalDate? madeOn, LocalDate? nextMadeOn = null)
    {
        if (nextMadeOn < madeOn)
            throw new ArgumentOutOfRangeException(nameof(nextMadeOn), "The next document is dated before this one.");
        var years = madeOn is { } made && Years is { } y ? CorrespondingDate.AddYears(made, y) : (LocalDate?)null;
        var until = (Years, UntilNext) switch
        {
            _ when Last is not null => null,
            (null, true) => nextMadeOn,
            (not null, true) => nextMadeOn is { } next && years is { } least ? LocalDate.Max(next, least) : null,
            _ => years,
        };
        return new KeepUntil(until, Words, Source, Confidence)
        {
            AtLeastUntil = UntilNext || Last is not null ? years : null,
            IsKnown = !NotFound,
        };
    }
}

/// <summary>Finds the kind of document that a report is, for keeping it.</summary>
public static class Kept
{
    /// <summary>A basis not stated counts as periodic.</summary>
    public static KeptDocument As(Basis? basis, Purpose? purpose) =>
        (basis, purpose) switch
        {
            (Basis.FirstUse, Purpose.Accessory) => KeptDocument.ReportBeforeFirstServiceOfAccessory,
            (Basis.FirstUse, _) => KeptDocument.ReportBeforeFirstService,
            (Basis.Installation, _) => KeptDocument.ReportAfterInstallation,
            _ => KeptDocument.PeriodicReport,
        };
}
