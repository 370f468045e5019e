using System.Text;
using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.Interchange.Tests;

/// <summary>A parser written apart from ours (npm ical.js) takes in the calendars that are written, one after the other.</summary>
public sealed class DueCalendarTests : IDisposable
{
    private static readonly DuePlace Yard = new("Alder Vale Ltd", "The yard");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-calendar");
    private int _files;

    public void Dispose() => _folder.Delete(recursive: true);

    /// <summary>RFC 5545, 3.6.1: the end of an event that has days only is the day after.</summary>
    [Fact]
    public void An_event_is_all_of_its_day()
    {
        var file = Written(List(1, Item("RB-1", new(2026, 2, 28))));
        var lines = File.ReadAllText(file).Split("\r\n");
        Assert.Contains("DTSTART;VALUE=DATE:20260228", lines);
        Assert.Contains("DTEND;VALUE=DATE:20260301", lines);
        var read = Assert.Single(TakenIn(file))!;
        Assert.Equal((true, "2026-02-28", "2026-03-01"), ((bool)read["allDay"]!, (string?)read["start"], (string?)read["end"]));
        Assert.Equal("Examination due: 1 item, Alder Vale Ltd The yard", (string?)read["summary"]);
    }

    [Fact]
    public void A_later_file_updates_what_the_calendar_has()
    {
        var first = Written(List(4, Item("RB-1", new(2026, 2, 28)), Item("RB-2", new(2026, 2, 28)), Item("RB-3", new(2026, 3, 9))));
        var second = Written(
            List(7, Item("RB-2", new(2026, 2, 28)), Item("RB-1", new(2026, 8, 28))) with
            {
                NoLonger = [(Yard, new(2026, 3, 9))],
            }
        );
        var (before, after) = (TakenIn(first), TakenIn(first, second));
        Assert.Equal(["2026-02-28", "2026-03-09"], before.Select(e => (string?)e!["start"]));
        Assert.Equal(["2026-02-28", "2026-08-28"], after.Select(e => (string?)e!["start"]));
        Assert.Equal(((string?)before[0]!["uid"], 7), ((string?)after[0]!["uid"], (int)after[0]!["sequence"]!));
        Assert.Equal("RB-2, serial S-RB-2 (connector)", (string?)after[0]!["description"]);
        // The earlier file taken in by mistake once more changes nothing back.
        Assert.Equal("RB-2, serial S-RB-2 (connector)", (string?)TakenIn(second, first)[0]!["description"]);
    }

    [Fact]
    public void The_same_place_has_the_same_id_however_it_is_spelt_and_another_place_or_register_another()
    {
        var day = new LocalDate(2026, 2, 28);
        string Id(DueList list) => (string)Assert.Single(TakenIn(Written(list)))!["uid"]!;
        var id = Id(List(1, Item("RB-1", day)));
        Assert.Equal(id, Id(List(1, Item("RB-1", day, new("ALDER VALE LIMITED", "the yard")))));
        Assert.NotEqual(id, Id(List(1, Item("RB-1", day, new("Alder Vale Ltd", "The depot")))));
        Assert.NotEqual(id, Id(List(1, Item("RB-1", day)) with { Register = "another" }));
    }

    [Theory]
    [InlineData("a,b;c\\d\\n:e\"")]
    [InlineData(
        "Grüße \u65E5\u672C\u8A9E \U0001F9D7 and so long that the line has to be folded in the middle of what takes several octets \u65E5\u672C\u8A9E\u65E5\u672C\u8A9E"
    )]
    [InlineData("X\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:planted")]
    [InlineData("tab\tand bell\u0007")]
    public void What_was_typed_comes_out_of_the_parser_and_no_line_is_too_long(string typed)
    {
        var file = Written(List(1, Item(typed, new(2026, 2, 28), new("Alder Vale Ltd", typed))));
        var must = string.Concat(typed.Select(c => char.IsControl(c) ? ' ' : c));
        var read = Assert.Single(TakenIn(file))!;
        Assert.Equal($"{must}, serial S-{must} (connector)", (string?)read["description"]);
        Assert.EndsWith(must, (string?)read["summary"], StringComparison.Ordinal);
        // RFC 5545, 3.1: lines end with CRLF and are at most 75 octets long.
        Assert.All(File.ReadAllText(file).Split("\r\n"), l =>
            Assert.True(!l.Contains('\n', StringComparison.Ordinal) && Encoding.UTF8.GetByteCount(l) <= 75, l)
        );
    }

    [Fact]
    public void The_same_list_gives_the_same_bytes()
    {
        var list = List(1, Item("RB-1", new(2026, 2, 28)), Item("RB-2", new(2026, 3, 28)));
        Assert.Equal(File.ReadAllBytes(Written(list)), File.ReadAllBytes(Written(list)));
    }

    private static DueItem Item(string id, LocalDate day, DuePlace? at = null) =>
        new(id, $"S-{id}", "connector", at ?? Yard, day, day, Standing.InService, $"fit");

    private static DueList List(long version, params DueItem[] due) =>
        new()
        {
            From = new(2026, 1, 1),
            To = new(2026, 12, 31),
            AsOf = new(2026, 1, 5),
            Due = due,
            Apart = [],
            NoLonger = [],
            HasItems = true,
            Languages = new Dictionary<string, string>(StringComparer.Ordinal),
            Register = "one",
            Version = version,
        };

    private string Written(DueList list)
    {
        var file = Path.Combine(_folder.FullName, FormattableString.Invariant($"due-{++_files}.ics"));
        WriteDueCalendar.Run(list, file, OutputGuard.NewFilesOnly, MessageLanguage.English);
        return file;
    }

    private static JsonArray TakenIn(params string[] files)
    {
        var folder = Programs.Packages.Value;
        return JsonNode.Parse(Programs.Run(folder, "node", [Path.Combine(folder, "calendar.mjs"), .. files]))!.AsArray();
    }
}
