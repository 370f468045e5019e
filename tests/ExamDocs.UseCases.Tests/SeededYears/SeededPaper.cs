using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>Names and places of the invented firm, and a record put together.</summary>
internal static class SeededPaper
{
    private static readonly string[] SiteNames = ["Harrowmere yard", "Pellow depot", "Stannick nursery"];

    private static readonly Party Employer = new()
    {
        Name = "Harrowmere Tree Works Ltd",
        Address = "1 Sallow Lane, Harrowmere, Norshire ZZ2 3AA",
    };

    private static readonly IReadOnlyList<Person> People = [Person("ex1", "Aldo Brennick"), Person("ex2", "Wilma Tarrow")];

    public static string Site(int site) => SiteNames[site];

    public static Visit Visit(string reference, int site, LocalDate day) =>
        new()
        {
            Reference = reference,
            Regime = "gb-loler",
            Employer = Employer,
            Premises = new Party { Name = SiteNames[site], Address = $"{SiteNames[site]}, Harrowmere, Norshire ZZ2 3AB" },
            EnforcingAuthority = new Party
            {
                Name = "Norshire office (invented)",
                Address = "2 Assembly Square, Harrowmere, Norshire ZZ2 1AA",
            },
            ExaminedOn = day,
            ReportedOn = day.PlusDays(1),
        };

    public static ExaminationRecord Record(
        Visit visit,
        IReadOnlyList<Item> rows,
        IReadOnlyList<Examination> examinations,
        IReadOnlyList<Renewal> renewals
    ) =>
        new()
        {
            Format = ExaminationRecord.FormatName,
            Visit = visit,
            People = People,
            Items = rows,
            Limits =
            [
                .. SeededModel
                    .All.Where(m => rows.Any(r => string.Equals(r.Model, m.Model, StringComparison.Ordinal)))
                    .Select(m => m.Limits),
            ],
            Examinations = examinations,
            Renewals = renewals,
        };

    private static Person Person(string id, string name) =>
        new()
        {
            Id = id,
            Name = name,
            Address = $"{name}, 4 Mill Steps, Harrowmere, Norshire ZZ2 3AC",
            Qualifications = "Examiner of climbing kit, Norshire Guild of Tree Workers",
            SelfEmployed = true,
        };
}
