using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.FirstVisit.Wording;

/// <summary>Words of the sheets for a first visit.</summary>
public abstract class FirstVisitPhrases
{
    public static InEachLanguage<FirstVisitPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the sheets that are being made.</summary>
    public static FirstVisitPhrases Current => Languages.Current;

    /// <summary>Stands in the margins too: no quotation mark.</summary>
    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string HowToWrite { get; }
    public abstract string Visit { get; }
    public abstract string Examiner { get; }
    public abstract string OtherPerson { get; }
    public abstract string Models { get; }
    public abstract string HowToModels { get; }
    public abstract string OneBox { get; }
    public abstract string HowToMeasure { get; }

    /// <summary>Of defects that have no room on the sheet.</summary>
    public abstract string MoreOverleaf { get; }

    /// <summary>Of all defects, where the sheet has no room for any.</summary>
    public abstract string DefectsOverleaf { get; }
    public abstract IReadOnlyList<string> YesAndNo { get; }
    public abstract IReadOnlyList<string> Cautions { get; }
    public abstract string Label(FormLine line);
}
