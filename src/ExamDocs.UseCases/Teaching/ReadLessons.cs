using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.Templates.Lessons;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Teaching;

/// <summary>Counts what the visits of a register teach.</summary>
internal static class ReadLessons
{
    /// <param name="place">The register.</param>
    /// <param name="employer">Whose kit; null for everybody's.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <returns>Null where nothing was examined.</returns>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static RecordLessons? From(string place, string? employer, LocalDate today)
    {
        using var register = DocumentRegister.OpenToRead(place, today);
        return Of(new ItemsOnRecord(register, today).All, employer);
    }

    /// <summary>Names of owners of whom something was examined, each as typed last.</summary>
    public static IReadOnlyList<string> Employers(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenToRead(place, today);
        return
        [
            .. new ItemsOnRecord(register, today)
                .All.Where(e => e.HasRow && e.Outcome.ExaminedOn is not null && FirmName.Fold(e.Owner).Length > 0)
                .GroupBy(e => FirmName.Fold(e.Owner), StringComparer.Ordinal)
                .Select(o => o.MaxBy(e => (e.Day, e.Visit.Visit))!.Owner!)
                .Order(StringComparer.OrdinalIgnoreCase),
        ];
    }

    internal static RecordLessons? Of(IReadOnlyList<ItemEntry> entries, string? employer)
    {
        var items = ItemHistories.Of(entries, employer);
        if (items.Count == 0)
            return null;
        var days = items.SelectMany(i => i.Examined).Select(l => l.Day).ToList();
        return new RecordLessons
        {
            Employer = employer,
            Visits = items.SelectMany(i => i.Visits).Distinct(StringComparer.Ordinal).Count(),
            Items = items.Count,
            First = days.Min(),
            Last = days.Max(),
            Rates = CountRates.Of(items),
            Survival = CountSurvival.Of(items),
            LeftOut = CountSurvival.LeftOut(items),
            Wear = CountSurvival.Wear(items),
            Reasons = CountRates.Reasons(items),
            Agreement = CountAgreement.Of(items),
        };
    }
}
