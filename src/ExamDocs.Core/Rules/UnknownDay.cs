using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules;

/// <summary>What explains a finding that is made only because nobody knows on which day an examination was.</summary>
internal static class UnknownDay
{
    /// <summary>Null where the day is known. One that gives no day of its own is of the visit's.</summary>
    public static PossibleCause? CauseOf(ExaminationCase examination) =>
        examination.On is not null ? null
        : examination.Examination.ExaminedOnUnreadable ? new PossibleCause($"{examination.Path}/examinedOn")
        : new PossibleCause("/visit/examinedOn", "PAR016");

    /// <summary>The same of the first of several whose day is not known.</summary>
    public static PossibleCause? CauseOf(IEnumerable<ExaminationCase> examinations) =>
        examinations.Select(CauseOf).FirstOrDefault(cause => cause is not null);
}
