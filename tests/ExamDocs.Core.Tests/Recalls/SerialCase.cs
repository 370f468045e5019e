using ExamDocs.Core.Recalls;
using static ExamDocs.Core.Recalls.RecallVerdict;

namespace ExamDocs.Core.Tests.Recalls;

/// <summary>One serial number against one way in which a notice names serial numbers.</summary>
/// <param name="Named">A range (<c>from..to</c>, an end may be missing), a pattern (<c>~</c> before it) or a list (<c>|</c> between).</param>
/// <param name="Serial">As on record.</param>
/// <param name="Expected">What has to come out.</param>
/// <param name="CheckCharacters">How many characters at the end do not count.</param>
public sealed record SerialCase(string Named, string? Serial, RecallVerdict Expected, int CheckCharacters = 0)
{
    /// <summary>What is plainly inside or outside; borders are inside.</summary>
    private static IReadOnlyList<SerialCase> Plain { get; } =
    [
        new("AB1000..AB2000", "AB1500", Affected),
        new("AB1000..AB2000", "AB1000", Affected),
        new("AB1000..AB2000", "AB2000", Affected),
        new("AB1000..AB2000", "AB0999", NotAffected),
        new("AB1000..AB2000", "AB2001", NotAffected),
        new("AB1000..AB2000", "AC1500", NotAffected),
        new("AB1000..", "AB9999", Affected),
        new("AB1000..", "AB123456", Affected),
        new("AB1000..", "AB999", NotAffected),
        new("..AB2000", "AB0001", Affected),
        new("..AB2000", "AB2001", NotAffected),
        new("AB1000..AB1000", "AB1000", Affected),
        new("1..20", "7", Affected),
        new("1..20", "21", NotAffected),
        new("99999999999999999990..100000000000000000010", "100000000000000000001", Affected),
        new("99999999999999999990..100000000000000000010", "99999999999999999989", NotAffected),
    ];

    /// <summary>Numbers of several runs, and ends of different lengths.</summary>
    private static IReadOnlyList<SerialCase> Mixed { get; } =
    [
        new("24A0100..24A0200", "24A0150", Affected),
        new("24A0100..24A0200", "24B0150", NotAffected),
        new("24A0100..24B0050", "24A9999", Affected),
        new("24A0100..24B0050", "24B0051", NotAffected),
        new("2024-10-0001..2024-20-0500", "2024-15-9999", Affected),
        new("2024-10-0001..2024-20-0500", "2024-20-0501", NotAffected),
        new("AB900..AB1100", "AB1000", Affected),
        new("AB900..AB1100", "AB10500", NotAffected),
        new("AB900..AB1100", "AB0900", Affected),
        new("A900..AA100", "A950", CannotTell),
        new("AB2000..AB1000", "AB1500", CannotTell),
        new("AB1000..2000", "AB1500", CannotTell),
    ];

    /// <summary>The same number as different people write it.</summary>
    private static IReadOnlyList<SerialCase> Respelt { get; } =
    [
        new("AB-1000..AB-2000", "ab 1500", Affected),
        new("AB1000..AB2000", "A B 1 5 0 0", Affected),
        new("AB0100..AB0200", "AB150", Affected),
        new("AB100..AB200", "AB000150", Affected),
        new("A0100..A0200", "AO15O", Affected),
        new("AI100..AI200", "Al150", Affected),
        new("OX100..OX200", "0X150", Affected),
        new("A0100..A0200", "AO99O", NotAffected),
        new("AB1000..AB2000", "SN AB1500", Affected),
        new("AB1000..AB2000", "S/N: AB-1500", Affected),
        new("1000..2000", "No. 1500", Affected),
        new("AB1000..AB2000", "NR1500", CannotTell),
        new("SN1000..SN2000", "SN1500", Affected),
        new("SN1000..SN2000", "SN2500", NotAffected),
        new("24-0100..24-0200", "240150", Affected),
        new("24-0100..24-0200", "24150", CannotTell),
        new("AB1000..AB2000", "AB15-00", Affected),
        new("AB1000..AB2000", "AB25-00", CannotTell),
        new("AB1000..AB2000", "ＡＢ１５００", Affected),
        new("AB1000..AB2000", "AB\u20111500", Affected),
    ];

    /// <summary>What is not there whole.</summary>
    private static IReadOnlyList<SerialCase> Unreadable { get; } =
    [
        new("AB1000..AB2000", null, CannotTell),
        new("AB1000..AB2000", "", CannotTell),
        new("AB1000..AB2000", " - ", CannotTell),
        new("AB1000..AB2000", "illegible", CannotTell),
        new("AB1000..AB2000", "0000", CannotTell),
        new("AB1000..AB2000", "AB0000", CannotTell),
        new("AB1000..AB2000", "AB1?00", CannotTell),
        new("AB1000..AB2000", "AB15??", CannotTell),
        new("AB1000..AB2000", "AB15__", CannotTell),
        new("AB1000..AB2000", "AB15-", CannotTell),
        new("AB1000..AB2000", "AB15\u2026", CannotTell),
        new("AB1000..AB2000", "AB15xx", CannotTell),
        new("AB1000..AB2000", "XX1500", CannotTell),
        new("AB1000..AB2000", "XB1500", CannotTell),
        new("AB1000..AB2000", "ax1500", CannotTell),
        new("AB1000..AB2000", "XC1500", NotAffected),
        new("AB1000..AD2000", "XC1500", CannotTell),
        new("AX1000..AX2000", "AX2500", NotAffected),
        new("AX1000..AX2000", "AY1500", CannotTell),
        new("X1000..X2000", "Y1500", NotAffected),
        new("..BB2000", "XA1500", CannotTell),
        new("24-0100..24-0200", "_4-0150", CannotTell),
        new("IO0100..IO0200", "150", CannotTell),
        new("IO0100..IO0200", "I150", CannotTell),
        new("AB1000..AB2000", "1500", CannotTell),
        new("AB1000..AB2000", "1500AB", CannotTell),
        new("AB1000..AB2000", "B1500", CannotTell),
        new("AB1000..AB2000", "AB9999/AB1500", CannotTell),
        new("AB1000..AB2000", "AB9999, 1500", CannotTell),
        new("AB1000..AB2000", "\u0410\u04121500", CannotTell),
        new("1000..2000", "1.5E+03", CannotTell),
        new("1000..2000", "2500.0", CannotTell),
    ];

    private static IReadOnlyList<SerialCase> Checked { get; } =
    [
        new("AB1000-3..AB2000-7", "AB1500-9", Affected, 1),
        new("AB1000-3..AB2000-7", "AB15009", Affected, 1),
        new("AB1000-3..AB2000-7", "AB1500", Affected, 1),
        new("AB1000-3..AB2000-7", "AB2500-1", NotAffected, 1),
        new("AB1000-3..AB2000-7", "AB1500-X", Affected, 1),
        new("AB1000K..AB2000M", "AB1500Z", Affected, 1),
        new("AB1000K..AB2000M", "AB2001A", NotAffected, 1),
        new("AB1000..AB2000", "AB2500-7", CannotTell),
        new("AB1000-31..AB2000-77", "AB1500-45", Affected, 2),
        new("3..7", "4", CannotTell, 1),
        new("~*7", "AB1008", CannotTell, 1),
        new("~*7", "AB1007-3", CannotTell, 1),
        new("~AB24##7", "AB2418", CannotTell, 1),
        new("~AB24*", "AB23117", NotAffected, 1),
        new("~AB24##K", "AB2317-K", NotAffected, 1),
    ];

    private static IReadOnlyList<SerialCase> Listed { get; } =
    [
        new("AB1|AB7|AB9", "ab-07", Affected),
        new("AB1|AB7|AB9", "AB8", NotAffected),
        new("AB1|AB7|AB9", "AB7/AB8", CannotTell),
        new("AB1|7788", "AB2", CannotTell),
        new("KITE|AB1", "kite", Affected),
        new("AB#24", "AB724", CannotTell),
        new("#24", "25", NotAffected),
        new("AB24*", "AB24117", CannotTell),
        new("AB1|AB7", "none", CannotTell),
    ];

    private static IReadOnlyList<SerialCase> Patterns { get; } =
    [
        new("~AB24*", "AB24117", Affected),
        new("~AB24*", "ab-24/117", CannotTell),
        new("~AB24*", "AB 24-117", Affected),
        new("~AB24*", "AB23117", NotAffected),
        new("~AB24*", "XY24117", NotAffected),
        new("~AB24*", "24117", CannotTell),
        new("~AB24*", "XX24117", CannotTell),
        new("~AB24*", "A824117", CannotTell),
        new("~AB####", "AB0012", Affected),
        new("~AB####", "AB12", Affected),
        new("~AB####", "AB12345", CannotTell),
        new("~00*", "12345", Affected),
        new("~24-0###", "24-117", Affected),
        new("~24-0###", "24117", Affected),
        new("~?B24##", "QB2417", Affected),
        new("~?B24##", "QB2517", NotAffected),
        new("~AO24##", "A02417", Affected),
        new("~AB24*", "SN AB24117", Affected),
        new("~AB24*", null, CannotTell),
        new("~IO*", "1716", CannotTell),
        new("~I?24*", "lA2417", Affected),
        new("HZ0443..IO2559", "lO0019", CannotTell),
        new("23-1146..24-1033", "230095 / 241000", CannotTell),
        new("~AB24*", "AB2?117", CannotTell),
        new("~*7", "AB10007", Affected),
        new("~*7", "AB10008", NotAffected),
        new("~15*", "2500 1500", CannotTell),
        new("~15*", "25-00", NotAffected),
        new("~24-0###", "25-0117", NotAffected),
        new("~24-0###", "25-0117 24-0117", CannotTell),
        new("~AB2[4-9]*", "AB25117", CannotTell),
        new("~AB{24,25}*", "AB24117", CannotTell),
        new("~24,25*", "24117", CannotTell),
        new("~(24|25)*", "24117", CannotTell),
        new("~AB2(4)*", "AB24117", CannotTell),
        new("~\u0410B24*", "AB24117", CannotTell),
        new("~\uFF21\uFF22\uFF12\uFF14*", "AB24117", Affected),
        new("~AB24*", "XB24117", CannotTell),
        new("~AB24*", "AX24117", CannotTell),
        new("~AB24XX", "AB24QK", CannotTell),
    ];

    public static IReadOnlyList<SerialCase> All { get; } =
    [.. Plain, .. Mixed, .. Respelt, .. Unreadable, .. Checked, .. Listed, .. Patterns];

    public NamedKit Kit =>
        Named.StartsWith('~') ? new() { SerialPatterns = [Named[1..]], CheckCharacters = CheckCharacters }
        : Named.Split("..") is [var from, var to]
            ? new() { SerialRanges = [new(from.Length == 0 ? null : from, to.Length == 0 ? null : to)], CheckCharacters = CheckCharacters }
        : new() { Serials = Named.Split('|'), CheckCharacters = CheckCharacters };
}
