namespace ExamDocs.Templates.Shared.Wording;

/// <summary>The same phrases in every language: a language is one more parameter here, and phrases that lack it do not compile.</summary>
/// <typeparam name="T">The abstract class of the phrases.</typeparam>
public sealed class InEachLanguage<T>(T english, T german, T french)
{
    public T English => english;

    public T German => german;

    public T French => french;

    /// <summary>In the language of the document that is being made.</summary>
    public T Current => In(Language.Current);

    public T In(Language language) =>
        language.Tag switch
        {
            "en" => english,
            "de" => german,
            "fr" => french,
            _ => throw new ArgumentException($"there are no phrases in {language.Tag}", nameof(language)),
        };
}
