using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Shared.Wording.Items;

/// <summary>Words for an item, its parts, its defects and its renewals, in every document that names them.</summary>
public abstract class ItemPhrases
{
    public static InEachLanguage<ItemPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static ItemPhrases Current => Languages.Current;

    public abstract string VisitDate { get; }
    public abstract string ColumnItem { get; }
    public abstract string ColumnDescription { get; }
    public abstract string Category { get; }
    public abstract string Maker { get; }
    public abstract string Model { get; }
    public abstract string PartNumber { get; }
    public abstract string Serial { get; }
    public abstract string OwnersMark { get; }
    public abstract string Manufactured { get; }
    public abstract string FirstUsed { get; }
    public abstract string NeverUsed { get; }
    public abstract string Standards { get; }
    public abstract string FittedTo { get; }
    public abstract string Parts { get; }
    public abstract string SafeWorkingLoad { get; }
    public abstract string MarkedStrength { get; }
    public abstract string Purpose { get; }
    public abstract string MakersLimits { get; }
    public abstract string EndOfService { get; }
    public abstract string DefectPart { get; }
    public abstract string DefectDanger { get; }
    public abstract string DefectRemedy { get; }
    public abstract string DangerNow { get; }
    public abstract string ImminentRisk { get; }
    public abstract string NoNext { get; }
    public abstract string NotAfter { get; }
    public abstract string NotAfterAnyDay { get; }
    public abstract string NoNotAfter { get; }
    public abstract string ExaminedOn { get; }

    /// <param name="number">Of the item's photos, from 1.</param>
    /// <param name="criterion">As printed.</param>
    /// <param name="state">The answer; null where there is none.</param>
    /// <param name="note">As typed.</param>
    public abstract string PhotoCaption(int number, string criterion, ObservedState? state, string? note);

    /// <param name="examination">What it is called in the law, for example thorough examination.</param>
    public abstract string Next(string examination);

    /// <summary>Followed by the date.</summary>
    public abstract string DangerLater { get; }
    public abstract string Document(string? title, string? revision, string? page);

    public abstract string Renewal(string removed, string fitted, string reason, string doneBy, string supervisedBy, string on);

    public abstract string Removal(string removed, string reason, string doneBy, string supervisedBy, string on);
}
