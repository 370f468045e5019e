using System.Globalization;
using ExamDocs.Core.Records;
using ExamDocs.Core.Service;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// What the records of a register hold that another visit needs as well: models with their makers' limits, people, firms and places.
/// Nothing about an item is among it.
/// </summary>
internal sealed class RegisteredModels
{
    private readonly IReadOnlyList<Person> _people;

    private RegisteredModels(IReadOnlyList<ModelOnRecord> models, IReadOnlyList<Person> people, IReadOnlyList<Party> firms) =>
        (Models, _people, Firms) = (models, people, firms);

    public IReadOnlyList<ModelOnRecord> Models { get; }

    /// <summary>For whom, where and of whose kit visits were made, the latest first.</summary>
    public IReadOnlyList<Party> Firms { get; }

    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="InvalidDataException">A record is not as it was stored.</exception>
    public static RegisteredModels In(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenExisting(place, today);
        var records = new RememberedRecords(register);
        var visits = register.Visits.All().OrderBy(v => v.ExaminedOn).ThenBy(v => v.Visit).ToList();
        // A limit that somebody altered in the register's file would let kit serve too long.
        register.Visits.AsLogged(records.Read).Require([.. visits.Select(v => v.Visit)]);
        var people = new PeopleOfVisits();
        foreach (var visit in visits)
            people.Add(records.Of(visit.Visit).People, visit.Visit.ToString(CultureInfo.InvariantCulture));
        return new RegisteredModels(
            ModelsOnRecord.Of(visits.Select(v => records.Of(v.Visit))),
            people.All,
            Known(visits.Select(v => records.Of(v.Visit).Visit))
        );
    }

    private static IReadOnlyList<Party> Known(IEnumerable<Visit> visits) =>
        [.. visits.Reverse().SelectMany(v => new[] { v.Employer, v.Premises, v.HiredFrom }).OfType<Party>().Distinct()];

    /// <summary>The record with what it does not have itself. What is disputed is left out: somebody has to look it up.</summary>
    public ExaminationRecord AddedTo(ExaminationRecord record) =>
        record with
        {
            Limits =
            [
                .. record.Limits,
                .. Models
                    .Where(m => !m.IsDisputed && !record.Limits.Any(own => ModelsOnRecord.AreOfOneModel(own, m.Limits)))
                    .Select(m => m.Limits with { Unobtainable = null }),
            ],
            People =
            [
                .. record.People,
                .. _people.Where(p => !record.People.Any(own => string.Equals(own.Id, p.Id, StringComparison.Ordinal))),
            ],
        };
}
