using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Reasons;

/// <summary>Why an item has its outcome. Without a full stop; most begin with a small letter.</summary>
public abstract class ReasonSentences
{
    /// <summary>A criterion with the note on it, or with its question where there is none.</summary>
    public abstract string Observed(string? criterion, string? note, string? question);

    public abstract string Defective(string observed);

    public abstract string InDoubt(string observed);

    public abstract string DefectWithoutLaterDate(string observed);

    public abstract string DefectNotDescribed { get; }

    public abstract string ImminentRisk(string what);

    public abstract string DangerNow(string what);

    public abstract string DangerWithoutTime(string what);

    public abstract string DangerNotAfterExamination(LocalDate by, string what);

    public abstract string DiameterOutside(decimal meanMm, decimal? positionMm, DiameterBand band, MakersLimits limits);

    public abstract string WithdrawalIsOpen(LocalDate on, string? document, string why, bool released);

    public abstract string ExaminerWithdraws { get; }

    public abstract string PartWithdrawn(string part);

    public abstract string PartNotPermitted(string? partNumber, string whole, string permitted, MakersLimits limits);

    public abstract string ServiceEnded(LocalDate on, string limit);

    public abstract string NoTimeLimit { get; }

    public abstract string AnswerNotAllowed(string? typed, string? criterion);

    public abstract string PartUndetermined(string part);

    /// <param name="part">Id of the part.</param>
    /// <param name="by">The day by which it was due for examination, or its last day of use, inclusive.</param>
    public abstract string PartOverdue(string part, LocalDate by);

    /// <param name="on">The day; null where it is not recorded.</param>
    /// <param name="document">Number of the document that says so; null where there is none.</param>
    public abstract string Destroyed(LocalDate? on, string? document);

    public abstract string NotExamined { get; }

    /// <summary>A finding that leaves the item undetermined.</summary>
    public abstract string RecordError(Finding finding);

    public abstract string NoAnswer(string criterion, string question);

    public abstract string CriterionNotExamined(string criterion, string question);

    public abstract string NotAfterDanger(LocalDate last, LocalDate danger, string what);

    public abstract string NotAfterPart(LocalDate last, string part);

    public abstract string NotAfterService(LocalDate last, string limit);
}
