using System.Text.RegularExpressions;
using ExamDocs.Core.Records;

namespace ExamDocs.Proof.Tests.Recalls;

/// <summary>What people make of a marking when they write it down. Nothing here makes another marking of it.</summary>
internal static class BadlyRecorded
{
    private static readonly Func<string, Random, string?>[] OfSerials =
    [
        (s, _) => s.ToLowerInvariant(),
        (s, _) => s.Replace("-", "", StringComparison.Ordinal).Replace("/", "", StringComparison.Ordinal),
        (s, _) => s.Replace(" ", "", StringComparison.Ordinal),
        (s, _) => s.Replace('-', ' '),
        (s, _) => s.Replace('-', '\u2013'),
        (s, _) => s.Replace('O', '0'),
        (s, _) => s.Replace('0', 'O'),
        (s, _) => s.Replace('I', 'l'),
        (s, _) => s.Replace('1', 'I'),
        (s, _) => Regex.Replace(s, "(?<![0-9])0+(?=[0-9])", "", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => Regex.Replace(s, "(?<![0-9])(?=[0-9])", "00", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => Regex.Replace(s, "(?<=[A-Z])(?=[0-9])", "-", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => Regex.Replace(s, "[A-Za-z]", "", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => Regex.Replace(s, "^[A-Za-z]+", "", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => Regex.Replace(s, "-[0-9]$", "", RegexOptions.None, TimeSpan.FromSeconds(1)),
        (s, _) => $"SN {s}",
        (s, _) => $"S/N: {s}",
        (s, _) => $"No. {s}",
        (s, r) => s.Insert(r.Next(s.Length), " "),
        (s, r) => Replaced(s, r, '?'),
        (s, r) => Replaced(s, r, '_'),
        (s, r) => s[..r.Next(s.Length)] + "\u2026",
        (s, r) => s[..r.Next(s.Length)] + "??",
        (s, _) => $"{s} / {s}",
        (s, _) => s.Replace('H', '\u041D').Replace('A', '\u0410'),
        (_, _) => "illegible",
        (_, _) => "0",
        (_, _) => "",
        (_, _) => null,
    ];

    private static readonly Func<string, string?>[] OfNames =
    [
        n => n.ToUpperInvariant(),
        n => n.Replace(" ", "", StringComparison.Ordinal),
        n => n.Replace(" ", "-", StringComparison.Ordinal),
        n => n.Replace(" Ltd", " Limited", StringComparison.Ordinal),
        n => n.Replace(" Ltd", "", StringComparison.Ordinal),
        n => n.Split(' ')[0],
        n => n.Replace("er", "re", StringComparison.Ordinal),
        n => n.Replace('o', '0').Replace('e', '\u00E9'),
        n => n.Replace('a', '\u0430'),
        n => n.Replace("2", "II", StringComparison.Ordinal),
        n => $"{n} (new)",
        _ => null,
    ];

    public static Item Of(Item item, Random random)
    {
        for (var n = random.Next(4); n > 0; n--)
            item = random.Next(5) switch
            {
                0 => item with { Maker = item.Maker is { } maker ? OfNames[random.Next(OfNames.Length)](maker) : null },
                1 => item with { Model = item.Model is { } model ? OfNames[random.Next(OfNames.Length)](model) : null },
                2 => item with
                {
                    Manufactured = random.Next(2) == 0 || item.Manufactured is not { } made ? null : new PartialDate(made.Year),
                },
                _ => item with
                {
                    Serial = item.Serial is { Length: > 0 } serial ? OfSerials[random.Next(OfSerials.Length)](serial, random) : null,
                },
            };
        return item;
    }

    private static string Replaced(string serial, Random random, char by)
    {
        var at = random.Next(serial.Length);
        return serial[..at] + by + serial[(at + 1)..];
    }
}
