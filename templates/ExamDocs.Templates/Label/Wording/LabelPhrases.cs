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

    public abstract string NotDetermined { get; }
    public abstract string SignLabel { get; }
    public abstract string HoldSignLabel { get; }
    public abstract string Why { get; }
    public abstract string Since { get; }
    public abstract string Release { get; }
    public abstract string WhyHold { get; }
    public abstract string ReleaseByPerson { get; }
    public abstract string ReleaseHold { get; }
    public abstract string NeverRelease { get; }
    public abstract string Owner { get; }
    public abstract string ExaminedBy { get; }
    public abstract string PageOne { get; }
    public abstract string Shortened { get; }
    public abstract string Caution { get; }
    public abstract string Verify(string number);

    public abstract string More(int more);

    public abstract string Title(string kind, string number);

    public abstract string QuarantineTitle { get; }
    public abstract string HoldTitle { get; }
    public abstract string Regime(string law);

    public abstract string SinceDay(LocalDate? day);
}
