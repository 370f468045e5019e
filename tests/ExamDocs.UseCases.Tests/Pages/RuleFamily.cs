using System.Globalization;

namespace ExamDocs.UseCases.Tests.Pages;

/// <summary>The rules that share a page.</summary>
/// <param name="Page">File in docs/rules.</param>
/// <param name="Title">Heading of the page.</param>
/// <param name="Codes">Letters (all rules of these letters), codes, or ranges of codes, with blanks between; ends are inside.</param>
internal sealed record RuleFamily(string Page, string Title, string Codes)
{
    /// <summary>In the order of the index.</summary>
    public static IReadOnlyList<RuleFamily> All { get; } =
    [
        new("outcomes.md", "Outcomes: withdraw, undetermined, fit until", "W U D"),
        new("contradictions.md", "Contradictions", "CON"),
        new("dates.md", "Dates", "DAT"),
        new("identity.md", "Identity", "IDN"),
        new("measurement.md", "Diameters", "MEA"),
        new("people.md", "People, employers and owners", "PAR001-002 PAR014-015 PAR018 PAR023-025"),
        new("particulars.md", "The visit, the item and its examination", "PAR003-007 PAR012-013 PAR016-017 PAR019-020 PAR022 PAR028"),
        new("defects.md", "Defects", "PAR008-011 PAR021 PAR032"),
        new("limits.md", "Maker's limits", "PAR029-031"),
        new("regimes.md", "Regimes", "PAR026-027 PAR033 PAR040"),
        new("renewals.md", "Parts and renewals", "REN"),
        new("printing.md", "Printing", "PRN"),
        new(
            "values.md",
            "Reading: words, numbers and dates",
            "INT001-009 INT023-029 INT035-036 INT039 INT053-054 INT061-063 INT080 INT084-085"
        ),
        new(
            "sheets.md",
            "Reading: sheets, columns and rows",
            "INT020-022 INT030-033 INT037-038 INT052 INT055 INT060 INT068 INT075-076 INT081-083 INT086"
        ),
        new("beside.md", "Reading: what is hidden, struck out or beside the cells", "INT034 INT047 INT056 INT064-067 INT069-071 INT074"),
        new("files.md", "Reading: files, photos and several inputs", "INT040-046 INT050-051 INT072-073 INT090"),
    ];

    public bool Holds(string code) => Codes.Split(' ').Any(part => Covers(part, code));

    private static bool Covers(string part, string code)
    {
        var letters = Letters(part);
        if (!string.Equals(letters, Letters(code), StringComparison.Ordinal))
            return false;
        if (letters.Length == part.Length)
            return true;
        var bounds = part[letters.Length..].Split('-');
        return Number(code[letters.Length..]) >= Number(bounds[0]) && Number(code[letters.Length..]) <= Number(bounds[^1]);
    }

    private static string Letters(string code) => string.Concat(code.TakeWhile(char.IsAsciiLetterUpper));

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
