using System.Collections;
using System.Reflection;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Core.Sentences;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Documents.Tests.Languages;

/// <summary>Everything that a language says, called with values that can be told from the words around them.</summary>
internal static class Books
{
    private static readonly LocalDate[] Days = [.. Enumerable.Range(1, 12).Select(month => new LocalDate(2030 + month, month, 10 + month))];

    /// <summary>The phrases of every document, and the parts of the book of sentences, by the names of their classes.</summary>
    public static IReadOnlyDictionary<string, object> Of(Language language) =>
        Phrases(language).Concat(Sentences(language)).ToDictionary(p => Class(p).Name, StringComparer.Ordinal);

    /// <summary>
    /// What a member says: once for each way its enumerations and switches can stand; nothing where a value cannot be made up.
    /// </summary>
    public static IEnumerable<(string Call, string Text, IReadOnlyList<string> Values)> Say(
        Language language,
        string book,
        MemberInfo member
    )
    {
        var target = Of(language)[book];
        if (member is PropertyInfo property)
            return Texts(property.GetValue(target)).Select((text, at) => ($"{book}.{member.Name}[{at}]", text, (IReadOnlyList<string>)[]));
        var method = (MethodInfo)member;
        var choices = method.GetParameters().Select((p, at) => Choices(p, at).ToList()).ToList();
        return choices.Exists(c => c.Count == 0)
            ? []
            : Products(choices)
                .Select(values =>
                    language.In(() =>
                        (
                            $"{book}.{member.Name}({string.Join(", ", values.Select(v => v.Value))})",
                            (string)method.Invoke(target, [.. values.Select(v => v.Value)])!,
                            (IReadOnlyList<string>)[.. values.Select(v => v.Printed(language)).OfType<string>()]
                        )
                    )
                );
    }

    public static IEnumerable<MemberInfo> Members(string book) =>
        Class(Of(Language.English)[book])
            .GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m =>
                m is PropertyInfo { PropertyType: var t }
                    ? t == typeof(string) || t == typeof(IReadOnlyList<string>)
                    : m is MethodInfo { IsSpecialName: false, IsAbstract: true, ReturnType: var r } && r == typeof(string)
            );

    private static IEnumerable<object> Phrases(Language language) =>
        typeof(Language)
            .Assembly.GetTypes()
            .Where(t => t is { IsAbstract: true, IsSealed: false, ContainsGenericParameters: false })
            .Select(t => t.GetProperty(nameof(CommonPhrases.Languages))?.GetValue(null))
            .OfType<object>()
            .Select(all => all.GetType().GetMethod(nameof(InEachLanguage<>.In))!.Invoke(all, [language])!);

    private static IEnumerable<object> Sentences(Language language) =>
        typeof(SentenceBook).GetProperties().Where(p => p.PropertyType.IsAbstract).Select(p => p.GetValue(language.Sentences)!);

    /// <summary>The abstract class that says what each language has to have.</summary>
    private static Type Class(object part) => part.GetType().BaseType!;

    private static IEnumerable<string> Texts(object? value) => value is IEnumerable<string> many ? many : [(string)value!];

    /// <summary>Values for a parameter, each with what a text must hold of it; an enumeration goes through all its names.</summary>
    private static IEnumerable<(object? Value, Func<Language, string?> Printed)> Choices(ParameterInfo parameter, int at)
    {
        var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return type switch
        {
            _ when type.IsEnum => Enum.GetValues(type).Cast<object?>().Select(v => Plain(v, null)),
            _ when type == typeof(bool) => [Plain(true, null), Plain(false, null)],
            _ when type == typeof(string) => [Plain($"«{at}§»", $"«{at}§»")],
            _ when type == typeof(int) => [Plain(731 + at, $"{731 + at}")],
            _ when type == typeof(decimal) => [(7.25m + at, l => $"{7 + at}{l.Notation.Decimal}25")],
            _ when type == typeof(LocalDate) => [(Days[at], l => l.Notation.Day(Days[at]))],
            _ when type == typeof(PartialDate) => [(PartialDate.Of(Days[at]), l => l.Notation.Day(Days[at]))],
            _ when type == typeof(MakersLimits) =>
            [
                Plain(
                    new MakersLimits
                    {
                        Source = new()
                        {
                            Title = "«title»",
                            Revision = "«revision»",
                            Page = "«page»",
                        },
                    },
                    "«title»"
                ),
            ],
            _ when type.IsAssignableFrom(typeof(string[])) && typeof(IEnumerable).IsAssignableFrom(type) =>
            [
                Plain(new[] { $"«{at}a»", $"«{at}b»" }, $"«{at}b»"),
            ],
            _ when type == typeof(KeepUntil) =>
            [
                Plain(new KeepUntil(Days[at], "", "", Confidence.Read), null),
                Plain(new KeepUntil(null, "", "", Confidence.Read) { AtLeastUntil = Days[at] }, null),
            ],
            _ => [],
        };
    }

    private static (object? Value, Func<Language, string?> Printed) Plain(object? value, string? printed) => (value, _ => printed);

    private static IEnumerable<IReadOnlyList<T>> Products<T>(IReadOnlyList<List<T>> choices) =>
        choices.Aggregate(
            (IEnumerable<IReadOnlyList<T>>)
                [
                    [],
                ],
            (all, next) => all.SelectMany(head => next.Select(value => (IReadOnlyList<T>)[.. head, value]))
        );
}
