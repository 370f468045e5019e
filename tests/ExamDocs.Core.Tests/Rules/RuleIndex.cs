using System.Text.RegularExpressions;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>Checks of an index of rules. They are plain functions over lists, so that a test can show each of them failing.</summary>
internal static partial class RuleIndex
{
    [GeneratedRegex(
        "^((PAR|CON|DAT|IDN|MEA|REN|INT)[0-9]{3}|W([1-9]|1[01])|U[0-6]|D[1-3])$",
        RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1_000
    )]
    private static partial Regex Shape { get; }

    /// <summary>Names of the concrete rule types that have no line in the index.</summary>
    /// <param name="types">Types of any kind.</param>
    /// <param name="rule">What makes a type a rule.</param>
    /// <param name="indexed">The rules that the index holds.</param>
    public static IReadOnlyList<string> Forgotten(IEnumerable<Type> types, Type rule, IEnumerable<object> indexed) =>
        [
            .. types
                .Where(t => t is { IsAbstract: false, IsInterface: false } && rule.IsAssignableFrom(t))
                .Except(indexed.Select(r => r.GetType()))
                .Select(t => t.Name)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Codes that are used more than once.</summary>
    public static IReadOnlyList<string> Shared(IEnumerable<string> codes) =>
        [.. codes.GroupBy(c => c, StringComparer.Ordinal).Where(g => g.Skip(1).Any()).Select(g => g.Key)];

    /// <summary>Codes that do not have the form of a code.</summary>
    public static IReadOnlyList<string> Misshapen(IEnumerable<string> codes) => [.. codes.Where(c => !Shape.IsMatch(c))];

    /// <summary>Codes without a case of their own.</summary>
    public static IReadOnlyList<string> Untested(IEnumerable<string> codes, IEnumerable<RuleCase> cases) =>
        [.. codes.Except(cases.Select(c => c.Code), StringComparer.Ordinal)];
}
