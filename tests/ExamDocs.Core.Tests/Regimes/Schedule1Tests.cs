using ExamDocs.Core.Regimes;

namespace ExamDocs.Core.Tests.Regimes;

public sealed class Schedule1Tests
{
    /// <summary>SI 1998/2307 Schedule 1 has eleven paragraphs (1 to 8 read as made, 9 to 11 from memory).</summary>
    [Fact]
    public void The_schedule_has_eleven_paragraphs_in_order()
    {
        var numbers = Schedule1.Particulars.Select(particular => particular.Number).ToList();
        Assert.Equal(Enumerable.Range(1, 11), numbers.Distinct());
        Assert.Equal(numbers.Order(), numbers);
    }

    [Fact]
    public void Every_particular_is_cited_once() =>
        Assert.Equal(
            Schedule1.Particulars.Count,
            Schedule1.Particulars.Select(particular => particular.Source).ToHashSet(StringComparer.Ordinal).Count);

    /// <summary>Paragraph 8 has six heads; (d) to (f) were not read in the official text.</summary>
    [Fact]
    public void What_was_not_read_says_so()
    {
        var fromMemory = Schedule1.Particulars.Where(particular => particular.FromMemory).ToList();
        Assert.Equal("8(d) 8(e) 8(f) 9 10 11", string.Join(' ', fromMemory.Select(particular => particular.Paragraph)));
        Assert.Equal("SI 1998/2307 Sch 1 para 8(d) (from memory)", fromMemory[0].Source);
    }
}
