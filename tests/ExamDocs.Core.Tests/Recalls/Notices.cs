using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Tests.Recalls;

/// <summary>An invented notice.</summary>
internal static class Notices
{
    public const string Maker = "Wenderby Harness Ltd";

    public static SafetyNotice Of(params NamedKit[] affected) =>
        new()
        {
            Maker = Maker,
            Reference = "WH-SN-26-04",
            On = new LocalDate(2026, 6, 1),
            Demands = "Take it out of use and send it back.",
            ReadAt = "letter of the maker",
            Affected = affected,
        };

    public static RecallVerdict Verdict(NamedKit kit, params Item[] rows) => RecallCheck.Of(Of(kit), rows).Verdict;

    public static Item Item(string? serial) => new() { Maker = Maker, Serial = serial };
}
