using System.Text;
using static ExamDocs.Intake.Tests.Hostile.HostileInput;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Files of separated values.</summary>
internal static class HostileValues
{
    private const string Rules = "breaks the rules";

    public static IEnumerable<HostileInput> All =>
        [
            Streamed(
                "A quote that is never closed, thirty megabytes long",
                "People.csv",
                ["id;name\nex1;\"", .. Enumerable.Repeat(new string('x', 1023) + "\n", 30_000)],
                Rules
            ),
            Streamed(
                "One line of thirty megabytes",
                "People.csv",
                ["id;name\nex1;", .. Enumerable.Repeat(new string('x', 1 << 20), 30), "\n"],
                Rules
            ),
            Streamed("A first line of thirty megabytes", "People.csv", [.. Enumerable.Repeat(new string(';', 1 << 20), 30)], Rules),
            Streamed("A million empty lines", "People.csv", ["id;name\n", .. Enumerable.Repeat("\n", 1_000_000), "ex1;Elm\n"], Read),
            Streamed(
                "A million lines of separators",
                "People.csv",
                ["id;name\n", .. Enumerable.Repeat(";\n", 1_000_001), "ex1;Elm\n"],
                "more cells"
            ),
            Streamed(
                "A million people",
                "People.csv",
                ["id;name\n", .. Enumerable.Range(0, 1_000_000).Select(n => $"ex{n};Elm\n")],
                "more cells filled in"
            ),
            Streamed("A file of forty megabytes", "People.csv", Enumerable.Repeat(new string('x', 1 << 20), 40), "larger than 32 MiB"),
            Streamed(
                "A value of forty thousand letters",
                "People.csv",
                ["id;name\nex1;", new string('x', 40_000), "\n"],
                "line 2, value 2: the text is longer than 32,767"
            ),
            Values("Lines of different length", "id;name\nex1\n", Rules),
            Values("A quote in the middle", "id;name\nex1;El\"m\n", Rules),
            Values("A quote without an end", "id;name\nex1;\"Elm\n", Rules),
            Values("Nothing but quotes", new string('"', 100_001), Rules),
            Values("Noughts among the letters", "id;name\nex1;E\0lm\n", "INT007"),
            Values("A formula", "id;name\nex1;=cmd|' /C calc'!A0\n", Read),
            Values(
                "Columns beyond the last",
                string.Concat(Enumerable.Repeat("a;", 20_000)) + "a\n" + string.Concat(Enumerable.Repeat("1;", 20_000)) + "1\n",
                "more than 5,000 faults"
            ),
            Of(
                "Two encodings in one file",
                "People.csv",
                [.. Encoding.UTF8.GetBytes("id;name\nex1;\u00D6se\n"), .. Encoding.Latin1.GetBytes("ex2;\u00D6se\n")],
                "INT040"
            ),
            Of(
                "UTF-8 that is not, with its mark",
                "People.csv",
                [0xEF, 0xBB, 0xBF, .. "id;name\nex1;"u8, 0xD6, (byte)'\n'],
                "says that it is UTF-8"
            ),
            Of(
                "UTF-16 with a byte too few",
                "People.csv",
                [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("id;name\nex1;Elm"), (byte)'x'],
                "INT007"
            ),
            Of("A workbook called .csv", "People.csv", [.. "PK\x03\x04"u8, .. new byte[500]], "a workbook or an archive"),
            Of("Nothing but a mark", "People.csv", [0xEF, 0xBB, 0xBF], Read),
        ];

    private static HostileInput Values(string name, string text, string says) => Of(name, "People.csv", Encoding.UTF8.GetBytes(text), says);
}
