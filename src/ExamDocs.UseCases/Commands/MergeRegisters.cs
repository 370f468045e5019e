using System.Globalization;
using ExamDocs.Core;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Takes another register in: what either of them knew then holds in the one.</summary>
public static class MergeRegisters
{
    /// <param name="place">The register that takes in.</param>
    /// <param name="other">The register that is taken in; it is not changed.</param>
    /// <param name="today">The day of the merge.</param>
    /// <exception cref="FileNotFoundException">One of them is not there.</exception>
    public static MergeReport Run(string place, string other, LocalDate today)
    {
        using var from = DocumentRegister.OpenToRead(other, today);
        using var register = DocumentRegister.OpenExisting(place, today);
        register.Recover();
        register.KeepContentUntil(ContentRetention.Of(register, KnownRules.BuiltIn));
        var (late, ends) = (new List<string>(), new List<(int ByVisit, LineEnd End)>());
        var result = register.Merge(
            from,
            json => EmbeddedRecord.Read(json, "register").Record,
            added =>
            {
                var found = OutOfUse(register, added).ToList();
                late.AddRange(found.Where(f => f.Line.On > f.On).Select(Late).Distinct(StringComparer.Ordinal));
                ends.AddRange(found.Where(f => f.Line.On <= f.On).Select(f => (f.ByVisit, Ended(f.Line, f.On, f.Why))));
                return ends;
            }
        );
        var ended = EndedDocuments.Of(register, ends.Select(e => (e.End.Visit, e.End.Item)), ends.Select(e => e.ByVisit).ToHashSet());
        return new MergeReport(result, [.. ended, .. late]);
    }

    /// <summary>
    /// What visits of one register withdrew, beside what visits of the other say of the same item: neither register could end
    /// a document that only the other had.
    /// </summary>
    private static IEnumerable<(int ByVisit, LocalDate On, string Why, KnownLine Line)> OutOfUse(
        DocumentRegister register,
        IReadOnlySet<int> added
    )
    {
        var (records, known) = (new RememberedRecords(register), new RegisterKnowledge(register));
        var logged = register.Visits.AsLogged(records.Read);
        var touched = added
            .SelectMany(v => logged.Touching(records.Of(v)))
            .DistinctBy(t => t.Visit.Visit)
            .Where(t => t.Outcomes.Any(IsOutOfUse) || records.Of(t.Visit.Visit).Items.Any(i => i.Status is ItemStatus.Lost));
        return from visit in touched
            let record = records.Of(visit.Visit.Visit)
            let lines = WhatIsKnown.Of(record, known.Touching(new VisitToDecide(record, [], visit.Visit.Sha256))).Lines
            from outcome in visit.Outcomes
            let why = WhyItEnds(outcome, record)
            let day = outcome.ExaminedOn ?? visit.Visit.ExaminedOn ?? visit.Visit.StoredOn
            where why is not null && day is not null
            from line in lines
            where
                string.Equals(line.Item, outcome.Item, StringComparison.Ordinal)
                && added.Contains(visit.Visit.Visit) != added.Contains(line.Visit)
            select (visit.Visit.Visit, day.Value, why, line);
    }

    private static LineEnd Ended(KnownLine line, LocalDate on, string why) =>
        new(line.Visit, line.OtherId, on, line.IsWhole ? $"{line.Item}, which is fitted to it, {why}" : why);

    private static string Late((int ByVisit, LocalDate On, string Why, KnownLine Line) found) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{found.Line.Item} {found.Why} on {found.On:uuuu-MM-dd} in one register, and looked at again on "
                + $"{found.Line.On:uuuu-MM-dd} in the other, which did not know of it. Unless it was released, it may not be used: "
                + $"take it out of use now."
        );

    private static string? WhyItEnds(RememberedOutcome outcome, ExaminationRecord record) =>
        string.Equals(outcome.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal) ? "was withdrawn"
        : record.Items.Any(i => i.Status is ItemStatus.Lost && string.Equals(i.Id, outcome.Item, StringComparison.Ordinal))
            ? "was recorded as lost"
        : IsOutOfUse(outcome) ? "is held: it could not be determined"
        : null;

    /// <summary>An item that was only not examined ends nothing.</summary>
    private static bool IsOutOfUse(RememberedOutcome outcome) =>
        string.Equals(outcome.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal)
        || (string.Equals(outcome.Outcome, Outcome.Undetermined.Word(), StringComparison.Ordinal) && outcome.Codes.Any(c => c is not "U0"));
}
