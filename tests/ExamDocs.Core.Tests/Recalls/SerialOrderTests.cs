using ExamDocs.Core.Recalls;

namespace ExamDocs.Core.Tests.Recalls;

/// <summary>Serial numbers against ranges, lists and patterns.</summary>
public sealed class SerialOrderTests
{
    public static TheoryData<string, string?, RecallVerdict, int> Cases { get; } =
    [.. SerialCase.All.Select(c => (c.Named, c.Serial, c.Expected, c.CheckCharacters))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_serial_number_is_inside_outside_or_open(string named, string? serial, RecallVerdict expected, int checkCharacters) =>
        Assert.Equal(expected, Notices.Verdict(new SerialCase(named, serial, expected, checkCharacters).Kit, Notices.Item(serial)));

    [Fact]
    public void Of_ranges_that_overlap_or_lie_apart_one_is_enough()
    {
        var kit = new NamedKit { SerialRanges = [new("AB1000", "AB2000"), new("AB1500", "AB2500"), new("AB4000", "AB4000")] };
        Assert.All(["AB1700", "AB2400", "AB4000"], s => Assert.Equal(RecallVerdict.Affected, Notices.Verdict(kit, Notices.Item(s))));
        Assert.Equal(RecallVerdict.NotAffected, Notices.Verdict(kit, Notices.Item("AB2501")));
    }

    [Fact]
    public void A_range_in_another_form_leaves_open_what_the_first_excludes()
    {
        var kit = new NamedKit { SerialRanges = [new("AB1000", "AB2000"), new("7000", "8000")] };
        Assert.Equal(RecallVerdict.CannotTell, Notices.Verdict(kit, Notices.Item("AB7500")));
    }
}
