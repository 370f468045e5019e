using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Shared;

/// <summary>A renewal in one sentence.</summary>
internal static class RenewalLine
{
    public static string Of(Renewal renewal, DeterminedVisit visit)
    {
        var (removed, reason, on) = (Printed.Text(renewal.RemovedPart), Printed.Text(renewal.Reason), Printed.Day(renewal.DoneOn));
        var (doneBy, supervisedBy) = (Name(renewal.DoneBy, visit), Name(renewal.SupervisedBy, visit));
        return renewal.FittedPart is { } fitted
            ? ItemPhrases.Current.Renewal(removed, fitted, reason, doneBy, supervisedBy, on)
            : ItemPhrases.Current.Removal(removed, reason, doneBy, supervisedBy, on);
    }

    public static string Name(string? person, DeterminedVisit visit) => Printed.Text(visit.Person(person)?.Name ?? person);
}
