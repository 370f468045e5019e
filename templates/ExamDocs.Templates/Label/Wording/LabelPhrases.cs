using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <summary>Words of the quarantine label and the hold label.</summary>
public abstract class LabelPhrases
{
    public static InEachLanguage<LabelPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static LabelPhrases Current => Languages.Current;

    public abstract string Eyelet { get; }

    /// <summary>The signal word, line by line.</summary>
    public abstract IReadOnlyList<string> Signal { get; }

    /// <summary>Width of the column with the names, in the size of type of what stands beside them.</summary>
    public abstract double NameColumnEms { get; }

    public abstract string NotDetermined { get; }
    public abstract string SignLabel { get; }
    public abstract string HoldSignLabel { get; }
    public abstract string Why { get; }
    public abstract string Since { get; }
    public abstract string Release { get; }
    public abstract string WhyHold { get; }
    public abstract string NeverRelease { get; }
    public abstract string KeptBy { get; }
    public abstract string Ring { get; }

    /// <summary>Where there is a name and no number.</summary>
    public abstract string Ask { get; }

    /// <summary>What the code says below its first line.</summary>
    /// <param name="isHold">Not determined, rather than withdrawn.</param>
    /// <param name="day">Since when.</param>
    public abstract string Says(bool isHold, string day);

    public abstract string ExaminedBy { get; }
    public abstract string PageOne { get; }
    public abstract string Shortened { get; }

    /// <param name="regime">Identifier of the regime: its law may have a name of its own for the competent person.</param>
    public abstract string ReleaseByPerson(string? regime);

    /// <inheritdoc cref="ReleaseByPerson"/>
    public abstract string ReleaseHold(string? regime);

    /// <inheritdoc cref="ReleaseByPerson"/>
    public abstract string Caution(string? regime);

    public abstract string Verify(string number);

    public abstract string More(int more);

    public abstract string Title(string kind, string number);

    public abstract string HandTagTitle { get; }

    /// <summary>Heads of the lines to fill in, in their order: what it is, what is marked on it, why, since when, by whom.</summary>
    public abstract IReadOnlyList<string> HandTagLines { get; }

    /// <summary>Why it has no number, and what to do next.</summary>
    public abstract string HandTagNote { get; }

    public abstract string QuarantineTitle { get; }
    public abstract string HoldTitle { get; }
    public abstract string Regime(string law);

    /// <summary>Before the name of whoever took an item out of use that nobody looked at.</summary>
    /// <param name="notice">Reference of the maker's safety notice.</param>
    public abstract string TakenOutBy(string notice);

    /// <summary>The law that holds for an item that nobody looked at.</summary>
    public abstract string Law(string law);

    public abstract string SinceDay(LocalDate? day);
}
