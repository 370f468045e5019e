namespace ExamDocs.Templates.Shared.Wording.Codes;

/// <summary>Words that the code of a paper and the label around it share.</summary>
public abstract class CodePhrases
{
    public static InEachLanguage<CodePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static CodePhrases Current => Languages.Current;

    public abstract string Serial(string serial);

    /// <summary>For a label on which the whole word has no room; S/N is marked on kit in every language.</summary>
    public static string ShortSerial(string serial) => $"S/N {serial}";

    public abstract string Mark(string mark);

    /// <inheritdoc cref="ShortSerial"/>
    public abstract string ShortMark(string mark);

    public abstract string Ring(string telephone);

    public abstract string Ring(string telephone, string name);

    /// <summary>Where there is a name and no number.</summary>
    public abstract string Ask(string name);
}
