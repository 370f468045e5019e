using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Outputs;

/// <summary>How files of documents are named: text and placeholders such as {employer}. The document's number is in every name.</summary>
public sealed partial class FileNamePattern
{
    private const string Number = "number";

    private const string Ending = ".pdf";

    /// <summary>Most characters of the text between the placeholders: the number must have room.</summary>
    private const int MostText = 60;

    private readonly IReadOnlyList<(string Text, bool IsPlaceholder)> _parts;

    private FileNamePattern(IReadOnlyList<(string, bool)> parts) => _parts = parts;

    /// <summary>What stands for something of the document, without the braces.</summary>
    public static IReadOnlyList<string> Placeholders { get; } =
    [Number, "kind", "employer", "premises", "reference", "item", "date", "issued"];

    /// <param name="typed">For example "{employer} {date} {kind} {number}".</param>
    /// <param name="objection">What is wrong with it, a sentence; null where nothing is.</param>
    /// <returns>Null where something is wrong.</returns>
    public static FileNamePattern? Parse(string typed, out string? objection)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var parts = Parts(typed);
        objection = Objection(parts);
        if (objection is not null)
            return null;
        var hasNumber = parts.Contains((Number, true));
        return new FileNamePattern(hasNumber ? parts : [.. parts, (" ", false), (Number, true)]);
    }

    /// <summary>The name of a document's file, with its ending.</summary>
    /// <param name="number">The document's number, which is never cut.</param>
    /// <param name="value">Gives what a placeholder stands for, as it was typed; null for nothing.</param>
    public string NameOf(string number, Func<string, string?> value)
    {
        var values = Placeholders.ToDictionary(p => p, p => p is Number ? number : SafeFileName.Part(value(p)), StringComparer.Ordinal);
        while (true)
        {
            var name = SafeFileName.Whole(Filled(values)) + Ending;
            // What is longest gives way, so that each part still says something.
            var longest = values.Where(v => v.Key is not Number && IsUsed(v.Key)).OrderByDescending(v => v.Value.Length).FirstOrDefault();
            if (SafeFileName.Fits(name) || longest.Value is null or "")
                return name;
            values[longest.Key] = SafeFileName.WithoutLast(longest.Value);
        }
    }

    private string Filled(Dictionary<string, string> values)
    {
        var name = new StringBuilder();
        var afterNumber = false;
        foreach (var (text, isPlaceholder) in _parts)
        {
            var part = isPlaceholder ? values[text] : text;
            if (part.Length == 0)
                continue;
            // A letter or digit beside the number would read as a part of it.
            var isNumber = isPlaceholder && text is Number;
            if ((isNumber || afterNumber) && name.Length > 0 && IsOfAWord(name[^1]) && IsOfAWord(part[0]))
                name.Append(' ');
            name.Append(part);
            afterNumber = isNumber;
        }
        return name.ToString();
    }

    private static bool IsOfAWord(char letter) => letter is not (' ' or '.' or ',' or '-' or '(' or ')' or '[' or ']' or '_');

    private bool IsUsed(string placeholder) => _parts.Contains((placeholder, true));

    private static IReadOnlyList<(string Text, bool IsPlaceholder)> Parts(string typed) =>
        [.. Part().Matches(typed).Select(m => m.Groups["name"].Success ? (m.Groups["name"].Value, true) : (m.Value, false))];

    private static string? Objection(IReadOnlyList<(string Text, bool IsPlaceholder)> parts)
    {
        var placeholders = parts.Where(p => p.IsPlaceholder).Select(p => p.Text).ToList();
        var text = string.Concat(parts.Where(p => !p.IsPlaceholder).Select(p => p.Text));
        var known = string.Join(", ", Placeholders.Select(p => $"{{{p}}}"));
        if (placeholders.Find(p => !Placeholders.Contains(p, StringComparer.Ordinal)) is { } unknown)
            return $"--names: there is no {{{SafeFileName.Part(unknown)}}}; known are {known}";
        if (text.AsSpan().ContainsAny('{', '}'))
            return $"--names: each brace needs its other half around one of {known}";
        if (placeholders.GroupBy(p => p, StringComparer.Ordinal).FirstOrDefault(g => g.Skip(1).Any()) is { Key: var twice })
            return $"--names: {{{twice}}} is there twice; name it once";
        if (placeholders.Count == 0)
            return $"--names: name at least one of {known}";
        if (text.AsSpan().ContainsAny('/', '\\'))
            return "--names: it makes names of files, not folders; leave / and \\ out";
        if (!SafeFileName.IsPart(text))
            return "--names: a character of it cannot be in a file name everywhere; take letters, digits, blanks, hyphens and _";
        return Encoding.UTF8.GetByteCount(text) > MostText
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"--names: the text between the placeholders is longer than {MostText} bytes; shorten it"
            )
            : null;
    }

    [GeneratedRegex(@"\{(?<name>[^{}]*)\}|[^{}]+|[{}]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Part();
}
