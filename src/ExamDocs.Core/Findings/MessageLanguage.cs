using System.Globalization;
using NodaTime;

namespace ExamDocs.Core.Findings;

/// <summary>How a language says messages, and how it writes the values in them.</summary>
public abstract class MessageLanguage
{
    /// <summary>The language in which messages are written in the code.</summary>
    public static MessageLanguage English { get; } = new WrittenInCode();

    /// <summary>For example de.</summary>
    public abstract string Tag { get; }

    /// <summary>The translation of a key; null where the language says it as it is, or has none.</summary>
    public abstract MessageTemplate? Translation(string key);

    /// <summary>A sentence of the program that has no values, for example why a rule matters.</summary>
    public string Sentence(string english) => Translation(english)?.Between[0] ?? english;

    /// <summary>The title of a rule.</summary>
    /// <param name="code">Its code.</param>
    /// <param name="english">The title in English.</param>
    public virtual string Title(string code, string english) => english;

    /// <summary>A source: our own words in it in this language, the law or publication as it is cited.</summary>
    public virtual string Source(string english) => english;

    /// <summary>
    /// A value in a message: texts as they are, because they were typed; messages in this language; days and numbers as it writes them.
    /// </summary>
    public virtual string Value(object? value) =>
        value switch
        {
            null => "",
            string text => text,
            Message message => message.In(this),
            LocalDate day => Day(day),
            decimal number => Number(number),
            IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? "",
        };

    protected abstract string Day(LocalDate day);

    protected abstract string Number(decimal number);

    private sealed class WrittenInCode : MessageLanguage
    {
        public override string Tag => "en";

        public override MessageTemplate? Translation(string key) => null;

        protected override string Day(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

        protected override string Number(decimal number) =>
            (number / 1.000000000000000000000000000000000m).ToString(CultureInfo.InvariantCulture);
    }
}
