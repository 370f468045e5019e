using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Records;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>Takes another register into one, so that what either knew holds in it.</summary>
public static class MergeRegisters
{
    /// <param name="place">The register that takes in.</param>
    /// <param name="other">The register that is taken in; it is not changed.</param>
    /// <param name="today">The day of the merge.</param>
    /// <exception cref="FileNotFoundException">One of them is not there.</exception>
    public static MergeResult Run(string place, string other, LocalDate today)
    {
        using var from = DocumentRegister.OpenToRead(other, today);
        using var register = DocumentRegister.OpenExisting(place, today);
        register.Recover();
        return register.Merge(from, json => EmbeddedRecord.Read(json, "register").Record, added => EndsOfTheOther(register, added));
    }

    /// <summary>
    /// Neither register could end a document that only the other had: what visits of one found out of use ends the lines of the
    /// other's documents that depend on examinations up to that day.
    /// </summary>
    private static List<(int ByVisit, LineEnd End)> EndsOfTheOther(DocumentRegister register, IReadOnlySet<int> added)
    {
        var (records, known) = (new RememberedRecords(register), new RegisterKnowledge(register));
        var touched = added.SelectMany(v => register.Visits.Touching(records.Of(v))).Where(t => t.Outcomes.Any(IsOutOfUse) || HasLost(records.Of(t.Visit.Visit))).DistinctBy(t => t.Visit.Visit);
        return
        [
            .. from by in touched
               let record = records.Of(by.Visit.Visit)
               let lines = WhatIsKnown.Of(record, known.Touching(new VisitToDecide(record, [], by.Visit.Sha256))).Lines
               from outcome in by.Outcomes
               let why = WhyItEnds(outcome, record)
               let day = outcome.ExaminedOn ?? by.Visit.ExaminedOn ?? by.Visit.StoredOn
               where why is not null && day is not null
               from line in lines
               where string.Equals(line.Item, outcome.Item, StringComparison.Ordinal) && line.On <= day && added.Contains(by.Visit.Visit) != added.Contains(line.Visit)
               select (by.Visit.Visit, new LineEnd(line.Visit, line.OtherId, day.Value, line.IsWhole ? $"{line.Item}, which is fitted to it, {why}" : why)),
        ];
    }

    private static string? WhyItEnds(RememberedOutcome outcome, ExaminationRecord record) =>
        string.Equals(outcome.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal) ? "was withdrawn"
        : record.Items.Any(i => i.Status is ItemStatus.Lost && string.Equals(i.Id, outcome.Item, StringComparison.Ordinal)) ? "was recorded as lost"
        : IsOutOfUse(outcome) ? "is held: it could not be determined" : null;

    /// <summary>What was only not examined ends nothing.</summary>
    private static bool IsOutOfUse(RememberedOutcome outcome) => string.Equals(outcome.Outcome, Outcome.Withdraw.Word(), StringComparison.Ordinal)
        || (string.Equals(outcome.Outcome, Outcome.Undetermined.Word(), StringComparison.Ordinal) && outcome.Codes.Any(c => c is not "U0"));

    private static bool HasLost(ExaminationRecord record) => record.Items.Any(i => i.Status is ItemStatus.Lost);
}
