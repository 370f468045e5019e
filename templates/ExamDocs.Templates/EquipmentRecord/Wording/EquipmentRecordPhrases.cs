using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord.Wording;

/// <summary>Words of the equipment record.</summary>
public abstract class EquipmentRecordPhrases
{
    public static InEachLanguage<EquipmentRecordPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static EquipmentRecordPhrases Current => Languages.Current;

    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string Reasons { get; }
    public abstract string Identity { get; }
    public abstract string Purchased { get; }
    public abstract string ObsoleteOn { get; }
    public abstract string Cleanings { get; }
    public abstract string Declaration { get; }
    public abstract string TransferEvidence { get; }
    public abstract string Status { get; }
    public abstract string Keeper { get; }
    public abstract string Owner { get; }
    public abstract string LastExamined { get; }
    public abstract string Limits { get; }
    public abstract string LimitsDocument { get; }
    public abstract string NoLimits { get; }
    public abstract string MaxUse { get; }
    public abstract string MaxStorage { get; }
    public abstract string MaxAge { get; }
    public abstract string MaxCleanings { get; }
    public abstract string EventEnds { get; }
    public abstract string EventEndsService { get; }
    public abstract string Interval { get; }
    public abstract string NoTimeLimit { get; }
    public abstract string MakerSaysNone { get; }
    public abstract string Unobtainable { get; }
    public abstract string NominalDiameter { get; }
    public abstract string PermittedParts { get; }
    public abstract string MinTail { get; }
    public abstract string Retying { get; }
    public abstract string Parts { get; }
    public abstract string NoParts { get; }
    public abstract string PartNow { get; }
    public abstract string PartBefore { get; }
    public abstract string WholeNow { get; }
    public abstract string WholeBefore { get; }
    public abstract string ColumnHow { get; }
    public abstract string ColumnThing { get; }
    public abstract string ColumnDescription { get; }
    public abstract string ColumnState { get; }
    public abstract string Examinations { get; }
    public abstract string NoExaminations { get; }
    public abstract string ColumnDate { get; }
    public abstract string ColumnWhy { get; }
    public abstract string ColumnResult { get; }
    public abstract string ColumnFound { get; }
    public abstract string NothingFound { get; }
    public abstract string Renewals { get; }
    public abstract string Remedies { get; }
    public abstract string Releases { get; }
    public abstract string Disposals { get; }
    public abstract string NotInRecord { get; }
    public abstract IReadOnlyList<string> Cautions { get; }
    public abstract string RecordHasErrors(IReadOnlyList<string> codes);
    public abstract string Years(int years);
    public abstract string Months(int months);
    public abstract string Times(int times);
    public abstract string Millimetres(decimal millimetres);
    public abstract string Diameter(decimal nominal, decimal? percent);
    public abstract string Sought(string? sought, LocalDate? until);
    public abstract string MayRetie(Retying who);
    public abstract string DeclarationLine(string? reference, LocalDate? on);
    public abstract string Conclusion(Conclusion? conclusion);
    public abstract string NextBy(LocalDate day);
    public abstract string Defect(string part, string description, string danger, string remedy);
    public abstract string DangerNow { get; }
    public abstract string DangerLater(LocalDate? on);
    public abstract string Diameters(int places, string smallest, string largest);
    public abstract string UnreadableDiameters { get; }
    public abstract string Test(string? what, string? result);
    public abstract string Event(string? what, LocalDate? on);
    public abstract string Remedy(LocalDate? on, string? what, string? by, string? evidence);

    /// <param name="document">Number of the document that withdrew it; null where the day is named, or neither.</param>
    /// <param name="inError">It was released because it had been recorded in error.</param>
    public abstract string Release(LocalDate? on, string by, string? document, LocalDate? withdrawnOn, bool inError, string? grounds);

    public abstract string Disposal(LocalDate? on, string what, string by);
}
