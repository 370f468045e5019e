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

    /// <summary>The same as <see cref="NextBy"/> for a label on which that has no room.</summary>
    public abstract string ShortNextBy { get; }

    /// <summary>The same as <see cref="NotAfter"/> for a label on which that has no room.</summary>
    public abstract string ShortNotAfter { get; }

    public abstract string SignLabel { get; }
    public abstract string PageOne { get; }

    public abstract string Title(string number);

    public abstract string IssuedOn(LocalDate day);

    /// <summary>The exact day, as short as the language writes it without any doubt which is the month.</summary>
    public abstract string ShortDay(LocalDate day);

    /// <summary>Where the label comes from.</summary>
    public abstract string Origin(string visit, LocalDate? examined, string law);

    /// <summary>Day, month and year in numbers, which German and French always write in this order.</summary>
    protected static string Numbers(LocalDate day) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{day.Day:00}.{day.Month:00}.{day.Year:0000}");

    /// <param name="regime">Identifier of the regime: its law may have a name of its own for the competent person.</param>
    public abstract string Caution(string? regime);
}
