using System.Text;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Tests.Outputs;

/// <summary>Whatever was typed as an employer or an id, the file can be made, moved and read on Windows, macOS and Linux.</summary>
public sealed class FileNamePatternTests
{
    private const string Number = "R-2026-000123";

    /// <summary>What the systems refuse or reserve: Microsoft's "Naming Files, Paths, and Namespaces", and POSIX.</summary>
    private static readonly string[] Devices = ["CON", "PRN", "AUX", "NUL", "COM1", "LPT9", "COM\u00B9", "CONIN$"];

    [Theory]
    [InlineData("{employer} {date} {kind} {number}", "Elm & Sons Ltd", "Elm & Sons Ltd 2026-05-11 report R-2026-000123.pdf")]
    [InlineData("{employer} {date} {kind}", "Elm", "Elm 2026-05-11 report R-2026-000123.pdf")]
    [InlineData("{number}", "Elm", "R-2026-000123.pdf")]
    [InlineData("{employer}{number}{date}", "Elm", "Elm R-2026-000123 2026-05-11.pdf")]
    [InlineData("{number}-{employer}", "Elm", "R-2026-000123-Elm.pdf")]
    [InlineData("{employer}", "Élagage Dupré, Sàrl", "Élagage Dupré, Sàrl R-2026-000123.pdf")]
    [InlineData("{employer}", "木登り株式会社", "木登り株式会社 R-2026-000123.pdf")]
    [InlineData("{employer}", "../../etc/passwd", "etc-passwd R-2026-000123.pdf")]
    [InlineData("{employer}", "C:\\Windows\\x", "C--Windows-x R-2026-000123.pdf")]
    [InlineData("{employer}", "a<b>c:d\"e|f?g*h", "a-b-c-d-e-f-g-h R-2026-000123.pdf")]
    [InlineData("{employer}", "Elm Ltd. . .", "Elm Ltd R-2026-000123.pdf")]
    [InlineData("{employer}", "-rf ~", "rf ~ R-2026-000123.pdf")]
    [InlineData("{employer}", ".hidden", "hidden R-2026-000123.pdf")]
    [InlineData("{employer}", "line\r\nbreak\ttab\0nul", "line break tab nul R-2026-000123.pdf")]
    [InlineData("{employer}", "report\u202Efdp.exe", "reportfdp.exe R-2026-000123.pdf")]
    [InlineData("{employer}", "\u2066Elm\u2069\u200B\uFEFF\u00AD", "Elm R-2026-000123.pdf")]
    [InlineData("{employer}", "half \uD800 pair", "half pair R-2026-000123.pdf")]
    [InlineData("{employer}", "e\u0301lan", "\u00E9lan R-2026-000123.pdf")]
    [InlineData("{employer}", "a\u2215b\uFF0Fc\u2044d", "a-b-c-d R-2026-000123.pdf")]
    [InlineData("{employer}", "", "R-2026-000123.pdf")]
    [InlineData("{employer}", null, "R-2026-000123.pdf")]
    [InlineData("{employer}", "\u202E\u200B", "R-2026-000123.pdf")]
    [InlineData("{employer}.{number}", "CON", "_CON.R-2026-000123.pdf")]
    [InlineData("{employer} .{number}", "nul", "_nul .R-2026-000123.pdf")]
    [InlineData("{employer}.{number}", "com\u00B2", "_com\u00B2.R-2026-000123.pdf")]
    public void A_name_is_made_of_what_was_typed(string pattern, string? employer, string expected) =>
        Assert.Equal(expected, Name(pattern, employer));

    [Theory]
    [InlineData("x")]
    [InlineData("木")]
    [InlineData("👩‍🌾")]
    [InlineData("a\u0301\u0323")]
    [InlineData("R-2026-000999 ")]
    public void What_is_too_long_is_cut_and_the_number_never(string unit)
    {
        foreach (var pattern in new[] { "{employer} {date} {kind} {number}", "{number} {employer}", "{employer}" })
        {
            var name = Name(pattern, string.Concat(Enumerable.Repeat(unit, 400)));
            Assert.True(name.Length <= 120 && Encoding.UTF8.GetByteCount(name) <= 140, name);
            Assert.Contains(Number, DocumentNumber.In(name));
            Assert.DoesNotContain('\uFFFD', name);
            Assert.DoesNotContain(" .pdf", name, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Whatever_single_character_is_typed_the_name_is_safe()
    {
        var pattern = FileNamePattern.Parse("{employer}.{item}{number}", out _)!;
        foreach (
            var typed in Enumerable
                .Range(0, 0x10000)
                .Select(c => new string((char)c, 1))
                .Concat(Devices)
                .Concat(Devices.Select(d => $"{d}.x"))
        )
        {
            var name = pattern.NameOf(Number, _ => typed);
            Assert.True(
                name.IndexOfAny(['<', '>', ':', '"', '/', '\\', '|', '?', '*']) < 0
                    && !name.Any(char.IsControl)
                    && !name.Any(c => char.GetUnicodeCategory(c) is System.Globalization.UnicodeCategory.Format)
                    && name[0] is not ('.' or ' ' or '-' or '~')
                    && name.EndsWith(".pdf", StringComparison.Ordinal)
                    && name[^5] is not (' ' or '.')
                    && !Devices.Contains(name.Split('.')[0].Trim(), StringComparer.OrdinalIgnoreCase)
                    && name.IsNormalized()
                    && DocumentNumber.In(name).Contains(Number, StringComparer.Ordinal),
                $"U+{(int)typed[0]:X4}: {name}"
            );
        }
    }

    [Theory]
    [InlineData(
        "{emploier} {number}",
        "there is no {emploier}; known are {number}, {kind}, {employer}, {premises}, {reference}, {item}, {date}, {issued}"
    )]
    [InlineData("{Number}", "there is no {Number}")]
    [InlineData("{}", "there is no {}")]
    [InlineData("", "name at least one of")]
    [InlineData("report", "name at least one of")]
    [InlineData("{number", "each brace needs its other half")]
    [InlineData("number} {date}", "each brace needs its other half")]
    [InlineData("{date} {date}", "{date} is there twice")]
    [InlineData("{employer}/{number}", "not folders")]
    [InlineData("{employer}\\{number}", "not folders")]
    [InlineData("{number}?", "cannot be in a file name everywhere")]
    [InlineData("{number}\u202E", "cannot be in a file name everywhere")]
    [InlineData("{number} 0123456789012345678901234567890123456789012345678901234567890", "longer than 60 bytes")]
    public void A_pattern_that_makes_no_names_is_refused_with_what_is_wrong(string pattern, string expected)
    {
        Assert.Null(FileNamePattern.Parse(pattern, out var objection));
        Assert.StartsWith("--names: ", objection, StringComparison.Ordinal);
        Assert.Contains(expected, objection, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_documents_never_have_one_name_in_whatever_case()
    {
        var pattern = FileNamePattern.Parse("{employer}", out _)!;
        string[] typed = ["Elm", "ELM", "elm ", "e\u200Blm", "Elm."];
        var names = typed.SelectMany((t, n) => new[] { 'R', 'N' }.Select(l => pattern.NameOf($"{l}-2026-{n + 1:000000}", _ => t))).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    private static string Name(string pattern, string? employer) =>
        FileNamePattern
            .Parse(pattern, out _)!
            .NameOf(Number, p => p switch
                {
                    "employer" => employer,
                    "date" => "2026-05-11",
                    "kind" => "report",
                    _ => null,
                });
}
