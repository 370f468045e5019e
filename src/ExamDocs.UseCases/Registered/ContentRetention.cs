using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.UseCases.Reading;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>Until when the documents of a visit have to be kept in any event, for a store that can keep them from being deleted.</summary>
internal static class ContentRetention
{
    /// <summary>
    /// For the number of a visit the last day that any of its regimes asks for, inclusive; null where none gives a day, or the record
    /// cannot be read. What depends on something still to come (the next report, the end of use) gives no day, and a lock cannot be
    /// shortened: only the years that hold in any event count.
    /// </summary>
    /// <param name="register">That remembers the visits.</param>
    /// <param name="rules">The regimes that visits can name.</param>
    public static Func<int, LocalDate?> Of(DocumentRegister register, KnownRules rules)
    {
        var last = (Visit: 0, Until: (LocalDate?)null);
        return visit =>
        {
            // The documents of a visit come one after the other.
            if (last.Visit != visit)
                last = (visit, EmbeddedRecord.Read(register.Visits.Record(visit), "register").Record is { } r ? Of(r, rules) : null);
            return last.Until;
        };
    }

    /// <inheritdoc cref="Of(DocumentRegister, KnownRules)"/>
    internal static LocalDate? Of(ExaminationRecord record, KnownRules rules)
    {
        var whole = SharedValues.FilledIn(record);
        return whole
            .Examinations.Where(e => whole.Visit.ReportedOn is not null && rules.FindRegime(e.Regime ?? whole.Visit.Regime) is not null)
            .SelectMany(e => PersonalData.RulesFor(e, whole, rules, null))
            .Max(k => k?.AtLeastUntil ?? k?.Until);
    }
}
