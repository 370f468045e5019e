using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Intake.Binding;

/// <summary>
/// The members of one object, taken one by one by name and kind. What is left over when all are taken is unknown;
/// what is there twice is reported, and the worse or no value holds.
/// </summary>
internal sealed class Members(ObjectNode node, FindingSink sink)
{
    /// <summary>Of what was typed, for a message.</summary>
    private const int MostShown = 80;

    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

    public string Pointer => node.Pointer;

    public string? Text(string name) => LimitedText(name, TextGuard.MaxText);

    /// <summary>An identity: short, on one line. Of a longer one the beginning is kept: whatever is said of the item repeats it.</summary>
    public string? Identity(string name) =>
        LimitedText(name, TextGuard.MaxIdentity) is { } identity ? TextGuard.Cut(identity, TextGuard.MaxIdentity) : null;

    public bool? Flag(string name)
    {
        bool? value = null;
        foreach (var member in Take(name))
        {
            if (member is BooleanNode flag)
                value = value is true || flag.Value;
            else if (!IsMissing(member))
                Wrong(member, "true or false");
        }
        return value;
    }

    public LocalDate? Date(string name) =>
        Only(name, "a date as text, for example 2026-05-11", t => DateText.ReadDay(t), IntakeRules.UnreadableDate);

    /// <summary>Whether a value was typed at all, readable or not.</summary>
    public bool IsTyped(string name) => node.Members.Any(m => string.Equals(m.Key, name, StringComparison.Ordinal) && !IsMissing(m.Value));

    public PartialDate? Partial(string name)
    {
        var found = Take(name).Where(m => !IsMissing(m)).ToList();
        if (found.Count != 1)
            return null;
        if (found[0] is not TextNode text)
            return Wrong<PartialDate>(found[0], "a date as text, for example 2024-02");
        if (DateText.ReadPartial(text.Text.Trim()) is { } date)
            return date;
        sink.Report(
            IntakeRules.UnreadableDate,
            text.Pointer,
            $"'{TextGuard.Cut(text.Text, MostShown)}' is not a date that can be read in one way only"
        );
        return null;
    }

    /// <param name="least">Smallest value allowed, inclusive.</param>
    /// <param name="most">Largest value allowed, inclusive.</param>
    public int? Whole(string name, int least, int most)
    {
        if (Number(name, least, most) is not { } number)
            return null;
        if (number == decimal.Truncate(number))
            return (int)number;
        sink.Report(
            IntakeRules.NumberOutOfRange,
            $"{Pointer}/{name}",
            $"{number.ToString(CultureInfo.InvariantCulture)} is not a whole number"
        );
        return null;
    }

    /// <inheritdoc cref="Whole"/>
    public decimal? Number(string name, decimal least, decimal most)
    {
        var found = Take(name).Where(m => !IsMissing(m)).ToList();
        return found.Count == 1 ? ToNumber(found[0], least, most) : null;
    }

    /// <summary>A list of numbers; an unreadable one is null in its place.</summary>
    public IReadOnlyList<decimal?> Numbers(string name, decimal least, decimal most) =>
        [.. Elements(name).Select(e => IsMissing(e) ? Wrong<decimal?>(e, "a number") : ToNumber(e, least, most))];

    /// <summary>A list of texts; null where the list is missing or empty.</summary>
    public IReadOnlyList<string>? Texts(string name)
    {
        var texts = Elements(name)
            .Select(e => e is TextNode t ? Guarded(t, TextGuard.MaxIdentity) : Wrong<string>(e, "text"))
            .OfType<string>()
            .ToList();
        return texts.Count == 0 ? null : texts;
    }

    /// <summary>One of a table's words; of two the worse.</summary>
    public T? Word<T>(string name, WordTable<T> words)
        where T : struct, Enum => WordAsTyped(name, words).Value;

    /// <summary>One of a table's words, none of which is the worse; null where it is written twice.</summary>
    public T? WordOnce<T>(string name, WordTable<T> words)
        where T : struct, Enum
    {
        var word = Word(name, words);
        return node.Members.Count(m => string.Equals(m.Key, name, StringComparison.Ordinal)) > 1 ? null : word;
    }

    /// <inheritdoc cref="Word"/>
    /// <param name="name">The member.</param>
    /// <param name="words">The words it may hold.</param>
    /// <param name="listed">False where not every word of the table is allowed here, so that the list would mislead.</param>
    /// <param name="beginning">The adverse word that a text begins with; null where none is known by its beginning.</param>
    public (string? Typed, T? Value) WordAsTyped<T>(string name, WordTable<T> words, bool listed = true, Func<string, T?>? beginning = null)
        where T : struct, Enum
    {
        string? typed = null;
        T? worst = null;
        foreach (var member in Take(name).Where(m => !IsMissing(m)))
        {
            typed = (member as TextNode)?.Text.Trim() ?? (member as NumberNode)?.Raw ?? "?";
            if (member is TextNode && words.Find(typed) is { } value)
                worst = worst is { } w ? words.Worse(w, value) : value;
            else if (member is TextNode text && beginning?.Invoke(typed) is { } adverse)
                worst = worst is { } before
                    ? words.Worse(before, ReportAdverse(text, adverse, words))
                    : ReportAdverse(text, adverse, words);
            else
                ReportWord(member, typed, words.All, listed);
        }
        return (typed, worst);
    }

    /// <summary>Text that must be one of the words given.</summary>
    public string? OneOf(string name, IReadOnlyList<string> words)
    {
        if (Text(name) is not { } typed)
            return null;
        if (words.Contains(typed, StringComparer.Ordinal))
            return typed;
        ReportWord(new TextNode($"{Pointer}/{name}", typed), typed, words);
        return null;
    }

    /// <summary>An object within; null where it is missing.</summary>
    public T? Part<T>(string name, Func<Members, T> bind)
        where T : class
    {
        T? part = null;
        foreach (var member in Take(name))
        {
            if (member is ObjectNode inner)
                part ??= Bind(inner, bind);
            else if (!IsMissing(member))
                Wrong(member, "an object in braces");
        }
        return part;
    }

    /// <summary>A list of objects; one that is no object is bound as an empty one, so that the others keep their places.</summary>
    public IReadOnlyList<T> List<T>(string name, Func<Members, T> bind) =>
        [
            .. Elements(name)
                .Select(element =>
                {
                    if (element is ObjectNode inner)
                        return Bind(inner, bind);
                    Wrong(element, "an object in braces");
                    return bind(new Members(new ObjectNode(element.Pointer, []), sink));
                }),
        ];

    /// <summary>Reports every member that nothing asked for.</summary>
    public void Finish()
    {
        foreach (var member in node.Members.Where(m => !_known.Contains(m.Key)))
        {
            var near = SpellingSuggestion.Of(member.Key, _known);
            sink.Report(
                IntakeRules.UnknownMember,
                member.Value.Pointer,
                $"'{TextGuard.Cut(member.Key, MostShown)}' is not a member that belongs here",
                near is null ? null : $"Did you mean '{near}'?"
            );
        }
    }

    private T Bind<T>(ObjectNode inner, Func<Members, T> bind)
    {
        var members = new Members(inner, sink);
        var bound = bind(members);
        members.Finish();
        return bound;
    }

    private T? Only<T>(string name, string kind, Func<string, T?> read, RuleInfo otherwise)
        where T : struct
    {
        var found = Take(name).Where(m => !IsMissing(m)).ToList();
        if (found.Count != 1)
            return null;
        if (found[0] is not TextNode text)
            return Wrong<T?>(found[0], kind);
        var value = read(text.Text.Trim());
        if (value is null)
            sink.Report(otherwise, text.Pointer, $"'{TextGuard.Cut(text.Text, MostShown)}' cannot be read as {kind}");
        return value;
    }

    private decimal? ToNumber(SourceNode member, decimal least, decimal most)
    {
        if (member is not NumberNode number)
            return Wrong<decimal?>(member, "a number");
        if (
            decimal.TryParse(number.Raw, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            && value >= least
            && value <= most
        )
            return value;
        sink.Report(
            IntakeRules.NumberOutOfRange,
            number.Pointer,
            string.Create(CultureInfo.InvariantCulture, $"{TextGuard.Cut(number.Raw, MostShown)} is not a number from {least} to {most}")
        );
        return null;
    }

    private string? LimitedText(string name, int longest)
    {
        string? first = null;
        foreach (var member in Take(name).Where(m => !IsMissing(m)))
        {
            var text = member is TextNode t ? Guarded(t, longest) : Wrong<string>(member, "text in quotation marks");
            first ??= text;
        }
        return first;
    }

    private string? Guarded(TextNode node, int longest)
    {
        var text = node.Text.Trim();
        if (TextGuard.Objection(text) is { } objection)
            sink.Report(IntakeRules.UnprintableText, node.Pointer, $"the text holds {objection}");
        if (text.Length > longest)
            sink.Report(
                IntakeRules.TextTooLong,
                node.Pointer,
                string.Create(CultureInfo.InvariantCulture, $"the text has {text.Length} characters, and {longest} can be printed whole")
            );
        return text.Length == 0 ? null : text;
    }

    private IEnumerable<SourceNode> Elements(string name)
    {
        foreach (var member in Take(name))
        {
            if (member is ListNode list)
            {
                foreach (var element in list.Elements)
                    yield return element;
            }
            else if (!IsMissing(member))
            {
                Wrong(member, "a list in square brackets");
            }
        }
    }

    private List<SourceNode> Take(string name)
    {
        _known.Add(name);
        var found = node.Members.Where(m => string.Equals(m.Key, name, StringComparison.Ordinal)).Select(m => m.Value).ToList();
        if (found.Count > 1)
            sink.Report(
                IntakeRules.DuplicateMember,
                found[1].Pointer,
                $"'{name}' is written {found.Count.ToString(CultureInfo.InvariantCulture)} times"
            );
        return found;
    }

    private T ReportAdverse<T>(TextNode typed, T adverse, WordTable<T> words)
        where T : struct, Enum
    {
        sink.Report(
            AnswerRules.AdverseWord,
            typed.Pointer,
            $"'{TextGuard.Cut(Guarded(typed, TextGuard.MaxText)!, MostShown)}' counts as {words.WordFor(adverse)}"
        );
        return adverse;
    }

    private void ReportWord(SourceNode member, string typed, IReadOnlyList<string> allowed, bool listed = true)
    {
        var near = SpellingSuggestion.Of(typed, allowed);
        var words = listed ? $"Allowed: {string.Join(", ", allowed)}." : "examdocs criteria lists the words that each criterion allows.";
        sink.Report(
            IntakeRules.UnknownWord,
            member.Pointer,
            $"'{TextGuard.Cut(typed, MostShown)}' is not one of the allowed words",
            near is null ? words : $"Did you mean '{near}'? {words}"
        );
    }

    private void Wrong(SourceNode member, string wanted) => sink.Report(IntakeRules.WrongType, member.Pointer, $"here belongs {wanted}");

    private T? Wrong<T>(SourceNode member, string wanted)
    {
        Wrong(member, wanted);
        return default;
    }

    private static bool IsMissing(SourceNode member) =>
        member is NullNode || (member is TextNode text && string.IsNullOrWhiteSpace(text.Text));
}
