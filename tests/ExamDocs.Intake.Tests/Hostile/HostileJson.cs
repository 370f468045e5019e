using System.Globalization;
using System.Text;
using static ExamDocs.Intake.Tests.Hostile.HostileInput;

namespace ExamDocs.Intake.Tests.Hostile;

/// <summary>Records in JSON, and what calls itself so.</summary>
internal static class HostileJson
{
    private const string Invalid = "not valid JSON";
    private const string Start =
        "{\"format\":\"examdocs/1\",\"visit\":{\"reference\":\"V\",\"regime\":\"gb-loler\",\"examinedOn\":\"2026-05-11\"}";
    private const int Many = 20_000;

    public static IEnumerable<HostileInput> All => [.. Broken, .. Floods, .. Values, .. Tangles];

    private static IEnumerable<HostileInput> Broken =>
        [
            Text("Nothing at all", "", Invalid),
            Text("A beginning without an end", Start, Invalid),
            Text("Two records in one file", Start + "}" + Start + "}", Invalid),
            Text("A comment", Start + "/* fit */}", Invalid),
            Text("A word that is no number", Start + ",\"items\":[{\"obsoleteOn\":NaN}]}", Invalid),
            Text("A number written with a plus", Start + ",\"limits\":[{\"maxUseYears\":+6}]}", Invalid),
            Of("Nought bytes", "visit.json", new byte[1_000], Invalid),
            Of("A nought in a text", "visit.json", Encoding.UTF8.GetBytes(Start + ",\"items\":[{\"id\":\"A\0B\"}]}"), Invalid),
            Of("UTF-16 with its mark", "visit.json", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Start + "}")], Invalid),
            Of("UTF-32 with its mark", "visit.json", [0xFF, 0xFE, 0, 0, .. Encoding.UTF32.GetBytes(Start + "}")], Invalid),
            Of(
                "Bytes that are no UTF-8",
                "visit.json",
                [.. Encoding.UTF8.GetBytes(Start + ",\"items\":[{\"id\":\""), 0xC3, 0x28, .. "\"}]}"u8],
                "not valid"
            ),
            Of("UTF-8 with its mark", "visit.json", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Start + "}")], Read),
            Text("Lists ten thousand deep", new string('[', 10_000) + new string(']', 10_000), Invalid),
            Text("Objects a million deep", string.Concat(Enumerable.Repeat("{\"a\":", 1_000_000)), Invalid),
            Text("A list for a record", "[1]", "INT003"),
            Text("A text for a record", "\"fit\"", "INT003"),
            Of("A workbook called .json", "visit.json", [.. "PK\x03\x04"u8, .. new byte[50]], Invalid),
        ];

    private static IEnumerable<HostileInput> Floods =>
        [
            Streamed(
                "A million members",
                "visit.json",
                [Start, .. Enumerable.Range(0, 1_000_000).Select(n => $",\"m{n}\":1"), "}"],
                "more values"
            ),
            Streamed(
                "A million unknown members of the visit",
                "visit.json",
                ["{\"format\":\"examdocs/1\",\"visit\":{\"x\":1", .. Enumerable.Range(0, 1_000_000).Select(n => $",\"m{n}\":1"), "}}"],
                "more values"
            ),
            Streamed(
                "Ten million empty lists",
                "visit.json",
                [Start, ",\"items\":[[]", .. Enumerable.Repeat(",[]", 10_000_000), "]}"],
                "more rows"
            ),
            Streamed(
                "A text of thirty megabytes",
                "visit.json",
                [Start, ",\"items\":[{\"id\":\"", .. Enumerable.Repeat(new string('x', 1 << 20), 30), "\"}]}"],
                "the text at #/items/0/id is longer than 32,767 characters"
            ),
            Streamed(
                "An id of five megabytes",
                "visit.json",
                [
                    Start,
                    ",\"items\":[{\"id\":\"A\"},{\"serial\":\"1\",\"id\":\"",
                    .. Enumerable.Repeat(new string('x', 1 << 20), 5),
                    "\"}]}",
                ],
                "the text at #/items/1/id is longer"
            ),
            Streamed(
                "A format of thirty megabytes",
                "visit.json",
                ["{\"format\":\"", .. Enumerable.Repeat(new string('x', 1 << 20), 30), "\",\"visit\":{}}"],
                "the text at #/format is longer"
            ),
            Streamed(
                "A text of escapes, five million of them",
                "visit.json",
                [Start, ",\"items\":[{\"standards\":[\"EN 358\",\"", .. Enumerable.Repeat("\\u0041", 5_000_000), "\"]}]}"],
                "the text at #/items/0/standards/1 is longer"
            ),
            Streamed(
                "An answer of twenty megabytes",
                "visit.json",
                [
                    Start,
                    ",\"examinations\":[{},{\"observations\":[{\"state\":\"",
                    .. Enumerable.Repeat(new string('d', 1 << 20), 20),
                    "\"}]}]}",
                ],
                "the text at #/examinations/1/observations/0/state is longer"
            ),
            Streamed(
                "Fifteen thousand descriptions of two thousand letters",
                "visit.json",
                [
                    Start,
                    ",\"items\":[",
                    .. Enumerable
                        .Range(0, 15_000)
                        .Select(n => $"{(n > 0 ? "," : "")}{{\"id\":\"{n}\",\"description\":\"{new string('x', 2_000)}\"}}"),
                    "]}",
                ],
                "longer together"
            ),
            Streamed(
                "Ids as long as are read, two hundred of them",
                "visit.json",
                [
                    Start,
                    ",\"items\":[",
                    .. Enumerable.Range(0, 200).Select(n => $"{(n > 0 ? "," : "")}{{\"id\":\"{n}{new string('x', 32_000)}\"}}"),
                    "]}",
                ],
                "INT009"
            ),
            Streamed(
                "A file of a hundred megabytes",
                "visit.json",
                [Start, .. Enumerable.Repeat(new string(' ', 1 << 20), 100), "}"],
                "larger than 64 MiB"
            ),
            Streamed(
                "A name of thirty megabytes",
                "visit.json",
                [Start, ",\"", .. Enumerable.Repeat(new string('x', 1 << 20), 30), "\":1}"],
                "name is longer"
            ),
            Streamed(
                "A number of ten million digits",
                "visit.json",
                [Start, ",\"limits\":[{\"maxUseYears\":", .. Enumerable.Repeat(new string('9', 1_000_000), 10), "}]}"],
                "the number at #/limits/0/maxUseYears has more digits"
            ),
            Streamed(
                "The same member a hundred thousand times",
                "visit.json",
                [Start, ",\"items\":[{\"id\":\"A\"", .. Enumerable.Repeat(",\"id\":\"A\"", 100_000), "}]}"],
                "INT002"
            ),
            Streamed(
                "Three hundred thousand items",
                "visit.json",
                [Start, ",\"items\":[", .. Enumerable.Range(0, 300_000).Select(n => $"{(n > 0 ? "," : "")}{{\"id\":\"{n}\"}}"), "]}"],
                "more rows than any recorded visit needs"
            ),
            Streamed(
                "Twenty thousand items, and one list of as many within",
                "visit.json",
                [
                    Start,
                    ",\"items\":[",
                    .. Enumerable.Range(0, 20_000).Select(n => $"{(n > 0 ? "," : "")}{{\"id\":\"{n}\"}}"),
                    "],\"examinations\":[{\"observations\":[{}",
                    .. Enumerable.Repeat(",{}", 20_000),
                    "]}]}",
                ],
                Read
            ) with
            {
                Undecided = "too many entries",
            },
        ];

    private static IEnumerable<HostileInput> Values =>
        [
            Streamed(
                "Thirty thousand members that nobody knows",
                "visit.json",
                [Start, .. Enumerable.Range(0, 30_000).Select(n => $",\"m{n}\":1"), "}"],
                "more than 20,000 faults"
            ),
            Text("A member twice", Start + ",\"items\":[{\"id\":\"A\",\"id\":\"B\"}]}", "INT002"),
            Text("A limit beyond all numbers", Start + ",\"limits\":[{\"maxUseYears\":1E+400}]}", "INT006"),
            Text("A number with an exponent beyond counting", Start + ",\"limits\":[{\"maxUseYears\":1E+99999999999}]}", "INT006"),
            Text("Half of a character pair in a record", Start + ",\"items\":[{\"id\":\"A\\uD83D\"}]}", "INT007"),
            Text("A character that hides", Start + ",\"items\":[{\"id\":\"A\\u200BB\"}]}", "INT007"),
            Text("A year beyond the calendar", Start + ",\"items\":[{\"id\":\"A\",\"manufactured\":\"99999-01-01\"}]}", "INT004"),
        ];

    /// <summary>Rows by the ten thousand that are all about the same: a check of each against each would never end.</summary>
    public static IEnumerable<HostileInput> Tangles =>
        [
            Rows("Items of one id", "share one id", ("items", n => "{\"id\":\"A\",\"category\":\"rope-bridge\",\"description\":\"x\"}")),
            Rows(
                "Items of one serial",
                null,
                ("items", n => $"{{\"id\":\"A{n}\",\"category\":\"rope-bridge\",\"maker\":\"M\",\"model\":\"F\",\"serial\":\"1\"}}")
            ),
            Rows(
                "Examinations of one item",
                "about one item",
                ("items", n => n == 0 ? "{\"id\":\"A\",\"category\":\"rope-bridge\"}" : $"{{\"id\":\"B{n}\"}}"),
                ("examinations", _ => Examination("A"))
            ),
            Rows(
                "Items of one id and as many examinations",
                "share one id",
                ("items", _ => "{\"id\":\"A\",\"category\":\"rope-bridge\"}"),
                ("examinations", _ => Examination("A"))
            ),
            Rows(
                "Examinations of unknown items",
                "does not have",
                ("items", n => $"{{\"id\":\"A{n}\",\"category\":\"rope-bridge\"}}"),
                ("examinations", n => Examination($"Z{n}", "defect"))
            ),
            Rows(
                "Renewals of one whole",
                "about one item",
                ("items", n => $"{{\"id\":\"A{n}\"}}"),
                ("renewals", n => $"{{\"item\":\"A0\",\"removedPart\":\"A{n}\",\"fittedPart\":\"A{n}\"}}")
            ),
            Rows("Parts on one another", "too many times over", ("items", n => $"{{\"id\":\"A{n}\",\"fittedTo\":\"A{n + 1}\"}}")),
            Rows("Parts of one whole", "about one item", ("items", n => $"{{\"id\":\"A{n}\",\"fittedTo\":\"A0\"}}")),
            Rows(
                "Limits of one model",
                "limits",
                ("items", n => $"{{\"id\":\"A{n}\",\"maker\":\"M\",\"model\":\"F\"}}"),
                ("limits", _ => "{\"maker\":\"M\",\"model\":\"F\",\"maxUseYears\":6}")
            ),
            Rows(
                "People of one id",
                "people",
                ("people", _ => "{\"id\":\"ex\"}"),
                ("items", n => $"{{\"id\":\"A{n}\"}}"),
                ("examinations", n => Examination($"A{n}"))
            ),
            Rows(
                "Releases of one item",
                "about one item",
                ("items", n => $"{{\"id\":\"A{n}\"}}"),
                ("releases", _ => "{\"item\":\"A0\",\"document\":\"Q-2025-000001\"}")
            ),
            Rows(
                "Disposals and remedies of one item",
                "cannot be decided",
                ("items", n => $"{{\"id\":\"A{n}\"}}"),
                ("disposals", _ => "{\"item\":\"A0\"}"),
                ("remedies", _ => "{\"item\":\"A0\"}")
            ),
            Rows(
                "References a letter off",
                "does not have",
                ("items", n =>
                    string.Create(CultureInfo.InvariantCulture, $"{{\"id\":\"ITEM-{n:00000}-A\",\"fittedTo\":\"ITEM-{n:00000}-B\"}}")
                )
            ),
            Of(
                "Answers to one criterion",
                "visit.json",
                () =>
                    Encoding.UTF8.GetBytes(
                        $"{Start},\"items\":[{{\"id\":\"A\",\"category\":\"rope-bridge\"}}],"
                            + "\"examinations\":[{\"item\":\"A\",\"observations\":["
                            + string.Join(',', Enumerable.Repeat("{\"criterion\":\"cover-cut\",\"state\":\"defect\"}", Many))
                            + "]}]}"
                    ),
                Read
            ) with
            {
                Undecided = "too many entries",
            },
            Of(
                "Defects of one item",
                "visit.json",
                () =>
                    Encoding.UTF8.GetBytes(
                        $"{Start},\"items\":[{{\"id\":\"A\",\"category\":\"rope-bridge\"}}],"
                            + "\"examinations\":[{\"item\":\"A\",\"defects\":["
                            + string.Join(',', Enumerable.Repeat("{\"criterion\":\"cover-cut\",\"danger\":\"later\"}", Many))
                            + "]}]}"
                    ),
                Read
            ) with
            {
                Undecided = "too many entries",
            },
            Of(
                "Stations along one rope",
                "visit.json",
                () =>
                    Encoding.UTF8.GetBytes(
                        $"{Start},\"items\":[{{\"id\":\"A\",\"category\":\"rope-bridge\"}}],"
                            + "\"examinations\":[{\"item\":\"A\",\"diameters\":["
                            + string.Join(',', Enumerable.Range(0, Many).Select(n => $"{{\"positionMm\":{n},\"readingsMm\":[11.1,11.0]}}"))
                            + "]}]}"
                    ),
                Read
            ) with
            {
                Undecided = "too many entries",
            },
        ];

    private static string Examination(string item, string state = "clear") =>
        $"{{\"item\":\"{item}\",\"examiner\":\"ex\",\"observations\":[{{\"criterion\":\"cover-cut\",\"state\":\"{state}\"}}]}}";

    private static HostileInput Text(string name, string json, string says) => Of(name, "visit.json", Encoding.UTF8.GetBytes(json), says);

    private static HostileInput Rows(string name, string? undecided, params (string List, Func<int, string> Row)[] lists) =>
        Of(
            $"{name}, twenty thousand times",
            "visit.json",
            () =>
                Encoding.UTF8.GetBytes(
                    Start
                        + string.Concat(lists.Select(l => $",\"{l.List}\":[{string.Join(',', Enumerable.Range(0, Many).Select(l.Row))}]"))
                        + "}"
                ),
            Read
        ) with
        {
            Undecided = undecided,
        };
}
