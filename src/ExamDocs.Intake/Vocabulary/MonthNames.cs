namespace ExamDocs.Intake.Vocabulary;

/// <summary>Names of months and their usual short forms, in the three languages: no name stands for two.</summary>
internal static class MonthNames
{
    /// <summary>January first; in lower case, without a full stop at the end.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> All { get; } =
    [
        ["january", "jan", "januar", "jänner", "jän", "janvier", "janv"],
        ["february", "feb", "februar", "feber", "février", "fevrier", "févr", "fevr", "fév"],
        ["march", "mar", "märz", "maerz", "mrz", "mär", "mars"],
        ["april", "apr", "avril", "avr"],
        ["may", "mai"],
        ["june", "jun", "juni", "juin"],
        ["july", "jul", "juli", "juillet", "juil"],
        ["august", "aug", "août", "aout"],
        ["september", "sep", "sept", "septembre"],
        ["october", "oct", "oktober", "okt", "octobre"],
        ["november", "nov", "novembre"],
        ["december", "dec", "dezember", "dez", "décembre", "decembre", "déc"],
    ];

    private static readonly Dictionary<string, int> ByName = All.SelectMany((names, n) => names.Select(name => (name, Month: n + 1)))
        .ToDictionary(m => m.name, m => m.Month, StringComparer.Ordinal);

    /// <summary>The month from 1 to 12; null where the name is none.</summary>
    public static int? Find(string name) => ByName.TryGetValue(name.TrimEnd('.').ToLowerInvariant(), out var month) ? month : null;
}
