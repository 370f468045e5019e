using ExamDocs.Core.Sentences.Basics;
using ExamDocs.Core.Sentences.Diameters;
using ExamDocs.Core.Sentences.Evidence;
using ExamDocs.Core.Sentences.Reasons;
using ExamDocs.Core.Sentences.Service;

namespace ExamDocs.Core.Sentences;

/// <summary>
/// The sentences of rules, measurements and the argument for service in one language, each whole with its values. Each part is an
/// abstract class with a subclass for each language, so that a sentence without its translation does not compile. What the user typed
/// stays as typed.
/// </summary>
public sealed class SentenceBook
{
    private SentenceBook(
        BasicWords words,
        ReasonSentences reasons,
        ServiceSentences service,
        DiameterSentences diameters,
        EvidenceSentences evidence
    ) => (Words, Reasons, Service, Diameters, Evidence) = (words, reasons, service, diameters, evidence);

    /// <summary>The language of files and of the screen.</summary>
    public static SentenceBook English { get; } = InEnglish(new Sentences.Basics.English(inPrint: false));

    /// <summary>The same for pages, where days and units do not break at the end of a line.</summary>
    public static SentenceBook EnglishInPrint { get; } = InEnglish(new Sentences.Basics.English(inPrint: true));

    public static SentenceBook German { get; } = InGerman(new Sentences.Basics.German());

    public static SentenceBook French { get; } = InFrench(new Sentences.Basics.French());

    /// <summary>Days, numbers, places, documents and answers.</summary>
    public BasicWords Words { get; }

    /// <summary>Why an item has its outcome.</summary>
    public ReasonSentences Reasons { get; }

    /// <summary>How long an item may serve.</summary>
    public ServiceSentences Service { get; }

    /// <summary>What the measured diameters show.</summary>
    public DiameterSentences Diameters { get; }

    /// <summary>The argument for service.</summary>
    public EvidenceSentences Evidence { get; }

    private static SentenceBook InEnglish(BasicWords words) =>
        new(
            words,
            new Sentences.Reasons.English(words),
            new Sentences.Service.English(words),
            new Sentences.Diameters.English(words),
            new Sentences.Evidence.English(words)
        );

    private static SentenceBook InGerman(BasicWords words) =>
        new(
            words,
            new Sentences.Reasons.German(words),
            new Sentences.Service.German(words),
            new Sentences.Diameters.German(words),
            new Sentences.Evidence.German(words)
        );

    private static SentenceBook InFrench(BasicWords words) =>
        new(
            words,
            new Sentences.Reasons.French(words),
            new Sentences.Service.French(words),
            new Sentences.Diameters.French(words),
            new Sentences.Evidence.French(words)
        );
}
