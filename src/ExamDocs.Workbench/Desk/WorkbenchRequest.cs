using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.Workbench.Desk;

/// <summary>What the workbench is opened with.</summary>
public sealed record WorkbenchRequest
{
    /// <summary>The register that it works with; the usual one is made by the first issue.</summary>
    public required RegisterPlace Register { get; init; }

    /// <summary>Folder of what lies on the desk: files brought in, documents issued, who the user is. Made where it is missing.</summary>
    public required string DataFolder { get; init; }

    /// <summary>Tells the present day.</summary>
    public required Func<LocalDate> Today { get; init; }

    /// <summary>Tells the present time.</summary>
    public Func<Instant> Now { get; init; } = SystemClock.Instance.GetCurrentInstant;

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>Port on the loopback address; 0 for any that is free.</summary>
    public int Port { get; init; }

    /// <summary>The most bytes that one upload may have.</summary>
    public long MostBytes { get; init; } = 100_000_000;
}
