using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Tests.Identity;

public sealed class CodeLineTests
{
    [Theory]
    [InlineData("D-2026-000004", "D-2026-000004", null)]
    [InlineData("D-2026-000004 CON-01", "D-2026-000004", "CON-01")]
    [InlineData("D-2026-000004 CON-01\nExamine by 11 Nov 2026\nSerial OT-44120\nRing 0000 555 0142", "D-2026-000004", "CON-01")]
    [InlineData("D-2026-000004 CON-01\r\nExamine by 11 Nov 2026", "D-2026-000004", "CON-01")]
    [InlineData("  Q-2026-1000000 bridge 4, left \n", "Q-2026-1000000", "bridge 4, left")]
    [InlineData("EXAMDOCS:Q-2026-000001:HB-014:B", "Q-2026-000001", "HB-014:B")]
    [InlineData("EXAMDOCS:Q-2026-000001:", "Q-2026-000001", null)]
    public void The_first_line_is_read_and_so_is_the_code_of_earlier_labels(string scanned, string number, string? item) =>
        Assert.Equal(new CodeLine(number, item), CodeLine.Read(scanned));

    [Theory]
    [InlineData("")]
    [InlineData("visit.xlsx")]
    [InlineData("d-2026-000004")]
    [InlineData("D-2026-000004-CON")]
    [InlineData("D-2026-0004 CON-01")]
    [InlineData("see D-2026-000004")]
    [InlineData("CON-01\nD-2026-000004 CON-01")]
    [InlineData("OTHER:Q-2026-000001:HB-014")]
    public void What_begins_otherwise_is_no_code_of_ours(string scanned) => Assert.Null(CodeLine.Read(scanned));

    [Fact]
    public void What_is_written_is_read_again()
    {
        var line = new CodeLine("D-2026-000004", "Größe 14");
        Assert.Equal(line, CodeLine.Read($"{line}\nmore"));
        Assert.Equal("D-2026-000004", new CodeLine("D-2026-000004", null).ToString());
    }
}
