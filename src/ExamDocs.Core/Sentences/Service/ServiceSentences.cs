using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Service;

/// <summary>How long an item may serve.</summary>
public abstract class ServiceSentences
{
    public abstract string Obsolescence(PartialDate on);

    public abstract string UseFromFirstUse(int years, PartialDate first, MakersLimits limits);

    public abstract string UseFromManufacture(int years, PartialDate made, MakersLimits limits);

    public abstract string AgeFromManufacture(int years, PartialDate made, MakersLimits limits);

    public abstract string StorageFromManufacture(int years, PartialDate made, MakersLimits limits);

    public abstract string InstructionsUnobtainable { get; }

    public abstract string RetiredByEvent(LocalDate on, string what, MakersLimits limits);

    public abstract string StoredTooLong(PartialDate first, int years, PartialDate made, LocalDate last, MakersLimits limits);

    public abstract string CleanedTooOften(int times, int allowed, MakersLimits limits);

    public abstract string AgeCannotBeCounted { get; }

    public abstract string StorageCannotBeCounted { get; }

    public abstract string UseCannotBeCounted { get; }

    public abstract string CleaningsCannotBeCounted { get; }

    public abstract string EndOfService(LocalDate on, bool ofStorage, string limit, IReadOnlyList<(LocalDate On, string Limit)> later);

    public abstract string UseNotBegun(MakersLimits limits);

    public abstract string Unlimited(MakersLimits limits);

    public abstract string NoLimitRecorded { get; }
}
