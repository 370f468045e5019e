using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.DueLabel.Wording;

/// <summary>Words of the next-examination label.</summary>
public abstract class DueLabelPhrases
{
    public static InEachLanguage<DueLabelPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static DueLabelPhrases Current => Languages.Current;

    public abstract string Kind { get; }
    public abstract string NextBy { get; }
    public abstract string NotAfter { get; }
    public abstract string SignLabel { get; }
    public abstract string PageOne { get; }

    public abstract string Title(string number);

    public abstract string IssuedOn(LocalDate day);

    /// <summary>Where the label comes from.</summary>
    public abstract string Origin(string visit, LocalDate? examined, string law);

    public abstract string Caution(string number);
}
