using ExamDocs.Core.Determination;
using ExamDocs.Core.Regimes;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.LawAndSources;
using ExamDocs.Templates.Shared.Wording.Regimes;

namespace ExamDocs.Templates.Shared;

/// <summary>The duty to send the enforcing authority a copy of the report where a risk of serious personal injury is imminent.</summary>
public static class AuthorityDuty
{
    /// <summary>The duty in force for this item, were a risk imminent; null where its law names none or is not known.</summary>
    public static Duty? Of(DeterminedVisit visit, DeterminedItem item) =>
        item
            .Regimes.SelectMany(r => r.DutiesTo(DutyKind.CopyAtImminentRisk, visit.Record.Visit.HiredFrom is not null, item.ExaminedOn))
            .FirstOrDefault();

    /// <summary>Whether a copy has to go to the authority because of this item.</summary>
    public static bool IsOwedFor(DeterminedVisit visit, DeterminedItem item) =>
        DefectEntry.Of(item).Any(d => d.ImminentRisk) && Of(visit, item) is not null;

    /// <summary>The authority in the words of the law.</summary>
    public static string Words(Duty duty, RegimeWording regime) =>
        regime.Authorities.GetValueOrDefault(duty.Whom)
        ?? LawAndSourcesPhrases.Current.Authority(duty.Whom, Phrases.Source(duty.Source), duty.Confidence);
}
