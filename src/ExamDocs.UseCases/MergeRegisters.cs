using ExamDocs.Core.Identity;
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
    /// Neither register could end a document that only the other had: a withdrawal of one ends the lines of the other's documents
    /// that rest on examinations up to its day. The same id of the same owner, however written, is one item here.
    /// </summary>
    private static List<(int ByVisit, LineEnd End)> EndsOfTheOther(DocumentRegister register, IReadOnlySet<int> added)
    {
        if (added.Count == 0)
            return [];
        var all = register.Visits.Outcomes().Where(o => o.Outcome.Item is not null).ToList();
        var fit = all.Where(o => o.Passes()).SelectMany(o => Folded.Keys(o.Outcome.Item).Select(k => (Key: k, Fit: o))).ToLookup(f => f.Key, f => f.Fit, StringComparer.Ordinal);
        return
        [
            .. from ended in all.Where(IsOutOfUse)
               from earlier in Folded.Keys(ended.Outcome.Item).SelectMany(k => fit[k]).Distinct()
               where added.Contains(ended.Visit.Visit) != added.Contains(earlier.Visit.Visit) && Day(earlier) <= Day(ended)
                   && FirmName.MayBeSame(earlier.Visit.Employer, ended.Visit.Employer)
               select (ended.Visit.Visit, new LineEnd(earlier.Visit.Visit, earlier.Outcome.Item!, Day(ended), Why(ended))),
        ];
    }

    /// <summary>Withdrawn, or held; what was only not examined ends nothing.</summary>
    private static bool IsOutOfUse(PastOutcome outcome) => outcome.IsWithdrawal()
        || (!outcome.Passes() && outcome.Outcome.Codes.Any(c => c is not "U0"));

    private static LocalDate Day(PastOutcome outcome) => outcome.Outcome.ExaminedOn ?? outcome.Visit.ExaminedOn ?? outcome.Visit.StoredOn ?? LocalDate.MaxIsoValue;

    private static string Why(PastOutcome outcome) =>
        $"{(outcome.IsWithdrawal() ? "withdrawn from service" : "not determined: not to be used")}{(outcome.Visit.Reference is { } reference ? $" at {reference}" : "")}";
}
