namespace ExamDocs.Templates.Shared.Wording.Kinds;

/// <summary>What people call each kind of document, in a few words: for names of files and lists.</summary>
public abstract class KindPhrases
{
    public static InEachLanguage<KindPhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static KindPhrases Current => Languages.Current;

    protected abstract string CopyOfReport { get; }

    /// <param name="kind">A kind of <see cref="DocumentTypes"/>.</param>
    /// <param name="isCopy">Whether it is the copy for the enforcing authority.</param>
    public string Of(string kind, bool isCopy) => isCopy ? CopyOfReport : Word(kind);

    /// <returns>The kind itself where it has no word.</returns>
    public abstract string Word(string kind);
}
