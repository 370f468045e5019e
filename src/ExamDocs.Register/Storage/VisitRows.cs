using System.Data.Common;
using System.Text.Json;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Register.Storage;

/// <summary>A visit taken apart into rows, so that it can be searched by item, person, criterion and day.</summary>
internal sealed class VisitRows(DbConnection connection)
{
    public void Insert(int number, string sha256, VisitToRemember visit, LocalDate today)
    {
        var (record, typed) = (visit.Record, visit.Record.Visit);
        connection.Execute(
            "INSERT INTO visit (visit, sha256, reference, regime, employer, premises, examined_on, stored_on, record) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
            number, sha256, typed.Reference, typed.Regime, typed.Employer?.Name, typed.Premises?.Name, Day(typed.ExaminedOn), Day(today), visit.Json);
        People(number, record.People);
        Items(number, record.Items);
        Limits(number, record.Limits);
        Examinations(number, record);
        Renewals(number, record.Renewals);
        Outcomes(number, visit.Outcomes);
    }

    private void People(int visit, IReadOnlyList<Person> people)
    {
        foreach (var (i, p) in people.Index())
            connection.Execute("INSERT INTO person VALUES ($1, $2, $3, $4, $5, $6)", visit, i, p.Id, p.Name, p.Address, p.Qualifications);
    }

    private void Items(int visit, IReadOnlyList<Item> items)
    {
        foreach (var (i, item) in items.Index())
        {
            connection.Execute(
                "INSERT INTO item VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14)",
                visit, i, item.Id, item.Category, item.Description, item.Maker, item.Model, item.PartNumber, item.Serial, item.OwnersMark,
                item.Manufactured?.ToString(), item.FirstUsed?.ToString(), item.FittedTo, Word(Words.Statuses, item.Status));
        }
    }

    private void Limits(int visit, IReadOnlyList<MakersLimits> limits)
    {
        foreach (var (i, l) in limits.Index())
        {
            connection.Execute(
                "INSERT INTO makers_limits VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                visit, i, l.Maker, l.Model, l.PartNumber, l.Source?.Title, l.Source?.Revision, l.Source?.Page);
        }
    }

    private void Examinations(int visit, ExaminationRecord record)
    {
        foreach (var (i, e) in record.Examinations.Index())
        {
            connection.Execute(
                "INSERT INTO examination VALUES ($1, $2, $3, $4, $5, $6, $7)",
                visit, i, e.Item, e.Examiner, Word(Words.Bases, e.Basis), Day(e.DayAt(record.Visit)), Word(Words.Conclusions, e.Conclusion));
            foreach (var (j, o) in e.Observations.Index())
                connection.Execute("INSERT INTO observation VALUES ($1, $2, $3, $4, $5, $6, $7)", visit, i, j, o.Criterion, o.StateAsTyped, o.Note, o.Photo);
        }
    }

    private void Renewals(int visit, IReadOnlyList<Renewal> renewals)
    {
        foreach (var (i, r) in renewals.Index())
            connection.Execute("INSERT INTO renewal VALUES ($1, $2, $3, $4, $5, $6)", visit, i, r.Item, r.RemovedPart, r.FittedPart, Day(r.DoneOn));
    }

    private void Outcomes(int visit, IReadOnlyList<RememberedOutcome> outcomes)
    {
        foreach (var (i, o) in outcomes.Index())
        {
            connection.Execute(
                "INSERT INTO outcome VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
                visit, i, o.Item, Day(o.ExaminedOn), o.Outcome, Day(o.Until), Day(o.NextBy), JsonSerializer.Serialize(o.Codes), JsonSerializer.Serialize(o.Parts), o.NeverReleasable ? 1 : 0);
        }
    }

    private static string? Word<T>(WordTable<T> words, T? value) where T : struct, Enum => value is { } known ? words.WordFor(known) : null;

    private static string? Day(LocalDate? day) => DocumentRows.Day(day);
}
