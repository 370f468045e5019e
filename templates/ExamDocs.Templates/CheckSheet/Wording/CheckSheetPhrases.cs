using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.CheckSheet.Wording;

/// <summary>Words of the check sheet.</summary>
public abstract class CheckSheetPhrases
{
    public static InEachLanguage<CheckSheetPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static CheckSheetPhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string TitleOfSeveral { get; }
    public abstract string Lead { get; }
    public abstract string Withdrawn { get; }
    public abstract string Held { get; }
    public abstract string WithdrawnSince { get; }
    public abstract string HeldSince { get; }
    public abstract string ReleaseByPerson { get; }
    public abstract string NeverRelease { get; }
    public abstract string ReleaseHold { get; }
    public abstract string LastOutcome { get; }
    public abstract string LastExamined { get; }
    public abstract string LastExaminer { get; }
    public abstract string NextBy { get; }
    public abstract string NotAfter { get; }
    public abstract string Status { get; }
    public abstract string Criteria { get; }
    public abstract string HowToTick { get; }
    public abstract string NotInCatalogue { get; }
    public abstract string LastTime { get; }
    public abstract string NoAnswer { get; }
    public abstract string Note { get; }
    public abstract string Optional { get; }
    public abstract string Examined { get; }
    public abstract string Diameters { get; }
    public abstract string HowToMeasure { get; }
    public abstract string Station { get; }
    public abstract string Position { get; }
    public abstract string FirstReading { get; }
    public abstract string SecondReading { get; }
    public abstract string LastMean { get; }
    public abstract string ReferenceEnd { get; }
    public abstract string NoNominal { get; }
    public abstract string OpenDefects { get; }
    public abstract string StillThere { get; }
    public abstract string PutRight { get; }
    public abstract string PutRightBy { get; }
    public abstract string Defects { get; }
    public abstract string MoreDefects { get; }
    public abstract string Part { get; }
    public abstract string What { get; }
    public abstract string Danger { get; }
    public abstract string DangerNow { get; }
    public abstract string DangerLater { get; }
    public abstract string Imminent { get; }
    public abstract string Remedy { get; }
    public abstract string Told { get; }
    public abstract string Tests { get; }
    public abstract string Conclusion { get; }
    public abstract string Basis { get; }
    public abstract string Fit { get; }
    public abstract string Withdraw { get; }
    public abstract string FitMeans { get; }
    public abstract string WithdrawMeans { get; }
    public abstract string ExaminerName { get; }
    public abstract string ExaminedOn { get; }
    public abstract string NextExamination { get; }
    public abstract string Recorded { get; }
    public abstract IReadOnlyList<string> Cautions { get; }
    public abstract string RecordHasErrors(IReadOnlyList<string> codes);

    /// <summary>A heading that names the item, for pages that come apart.</summary>
    public abstract string Of(string item, string heading);
    public abstract string AsTyped(string? word);
    public abstract string Class(CriterionClass criteria);

    /// <summary>The answer under its box, as short as it must be there.</summary>
    public abstract string Box(ObservedState state);

    /// <summary>What the short words under the boxes stand for.</summary>
    public abstract IReadOnlyList<string> Boxes { get; }
    public abstract string Means(Means means);
    public abstract string BasisBox(Basis basis);
    public abstract string Band(string nominal, string tolerance, string low, string high, string source);
    public abstract string NominalOnly(string nominal, string source);
    public abstract string Released(LocalDate? on, string by, string? grounds);
    public abstract string Disposed(DisposalAction? action, LocalDate? on, string by);
}
