using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.Enclosures.Wording;

/// <summary>Words of the list on top of a folder that is sent.</summary>
public abstract class EnclosuresPhrases
{
    public static InEachLanguage<EnclosuresPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the page that is being made.</summary>
    public static EnclosuresPhrases Current => Languages.Current;

    /// <summary>Name of its file, without an ending.</summary>
    public abstract string FileName { get; }
    public abstract string Title { get; }
    public abstract string Lead { get; }
    public abstract string PutTogetherOn { get; }
    public abstract string To { get; }
    public abstract string From { get; }
    public abstract string ExaminedAt { get; }
    public abstract string What { get; }
    public abstract string Items { get; }
    public abstract string Pages { get; }
    public abstract string Sha256 { get; }
    public abstract string NotReported { get; }
    public abstract string HowToCheck { get; }
    public abstract string NoDocument { get; }

    /// <param name="documents">1 or more.</param>
    /// <param name="pages">1 or more.</param>
    public abstract string Count(int documents, int pages);
}
