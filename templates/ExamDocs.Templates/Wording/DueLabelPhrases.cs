using NodaTime;

namespace ExamDocs.Templates.Wording;

/// <summary>Words of the next-examination label.</summary>
public abstract class DueLabelPhrases
{
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
