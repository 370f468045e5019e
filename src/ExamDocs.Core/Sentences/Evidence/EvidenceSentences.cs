using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Sentences.Evidence;

/// <summary>The argument for service.</summary>
public abstract class EvidenceSentences
{
    public abstract string Marks(Item item);

    public abstract string Made(PartialDate on);

    public abstract string ManufactureNotRecorded { get; }

    public abstract string Declaration(string reference, LocalDate? on);

    public abstract string FittedWithoutList(string whole);

    public abstract string PartPermitted(string? partNumber, string whole);

    public abstract string NeverUsed { get; }

    public abstract string FirstUsed(PartialDate on);

    public abstract string FirstUseNotRecorded { get; }

    public abstract string Exposed(Exposure exposure);

    public abstract string LastExamined(PartialDate on);

    public abstract string NoEarlierExamination { get; }

    public abstract string ExaminedEarlier(LocalDate on, Conclusion? conclusion);

    public abstract string EventHappened(LocalDate on, string what);

    public abstract string Remedied(Remedy remedy);

    public abstract string Renewed(Renewal renewal);

    public abstract string NoAnswerYet(string criterion);

    public abstract string Answered(Observation observation);

    public abstract string Tested(TestMade test);

    public abstract string NextExaminationBy(LocalDate day);

    public abstract string EndedWithRenewal(LocalDate on, string why);

    /// <param name="inError">True where it was released because it had been recorded in error.</param>
    public abstract string EndedWithRelease(LocalDate on, string why, LocalDate released, string? by, string? grounds, bool inError);

    public abstract string EarlierDefect(string? description, string? criterion, LocalDate? found, LocalDate? danger);

    public abstract string RecordedAgain(string defect);

    public abstract string ResolvedBy(string defect, string remedy);

    public abstract string NotFoundAgain(string defect);

    public abstract string ExaminerConcludes(Conclusion? conclusion);
}
