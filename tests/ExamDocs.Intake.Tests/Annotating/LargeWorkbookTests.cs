using System.Globalization;
using System.Text;
using ExamDocs.Core.Findings;
using ExamDocs.Intake.Annotating;
using ExamDocs.Intake.Tests.Workbook;
using ExamDocs.Intake.Workbook.Package;

namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>Memory alive is that of the whole process: no other test may run meanwhile.</summary>
[CollectionDefinition(nameof(AloneInTheProcess), DisableParallelization = true)]
public sealed class AloneInTheProcess;

/// <summary>A large workbook goes by once, and is never held in memory as a whole.</summary>
[Collection(nameof(AloneInTheProcess))]
public sealed class LargeWorkbookTests
{
    private const string Sheet = "Rope bridges";
    private const int Rows = 10_000;
    private const int Columns = 40;

    [Fact]
    public void Ten_thousand_rows_with_500_marks_cost_one_pass_and_little_memory()
    {
        var found = Marks(Columns + 2);
        using var package = WorkbookPackage.Open(Large(Columns), new ReadingBudget());
        var copy = new AnnotatedCopy(package, found.Findings, found.Places, MessageLanguage.English);
        using var target = new MemorySampling();
        copy.Write(target);
        // Per cell its start, its text element's and text's nodes, and its ends: the copy reads each of them once.
        Assert.InRange(copy.Nodes, Rows * Columns, (Rows * Columns * 7) + (Rows * 2) + 1_000);
        Assert.InRange(target.Samples, 5, int.MaxValue);
        Assert.InRange(target.Most, 0, 24L * 1024 * 1024);
    }

    [Fact]
    public void All_500_marks_are_there()
    {
        var found = Marks(columns: 6);
        var before = Large(columns: 4).ToArray();
        var after = found.Copy(before);
        Assert.Empty(CopyDifference.Of(before, after, found.Cells));
        Assert.Equal(500, new ZipParts(after).AllNotes().Count);
    }

    /// <summary>On cells that are there, and on some beyond the last column.</summary>
    private static Annotated Marks(int columns)
    {
        var found = new Annotated();
        for (var n = 0; n < 500; n++)
            found.At(Sheet, CellAddress.Of((n * 20) + 3, 1 + (n % columns)), (Severity)(n % 3));
        return found;
    }

    private static MemoryStream Large(int columns)
    {
        var rows = new StringBuilder();
        for (var row = 1; row <= Rows; row++)
        {
            rows.Append(CultureInfo.InvariantCulture, $"<row r=\"{row}\">");
            for (var column = 1; column <= columns; column++)
                rows.Append(
                    CultureInfo.InvariantCulture,
                    $"<c r=\"{CellAddress.Of(row, column)}\" t=\"inlineStr\"><is><t>text {(row * 7919L * column) % 104729}</t></is></c>"
                );
            rows.Append("</row>");
        }
        return new XlsxFile().Sheet(Sheet, rows.ToString()).Stream();
    }

    /// <summary>Takes what is written, and now and then looks at how much memory is alive, beyond what was at first.</summary>
    private sealed class MemorySampling : MemoryStream
    {
        private readonly long _first = GC.GetTotalMemory(forceFullCollection: true);
        private long _written;
        private long _next = 200_000;

        public int Samples { get; private set; }

        public long Most { get; private set; }

        public override void Write(byte[] buffer, int offset, int count) => Look(count);

        public override void Write(ReadOnlySpan<byte> buffer) => Look(buffer.Length);

        public override bool CanSeek => false;

        private void Look(int count)
        {
            _written += count;
            if (_written < _next)
                return;
            _next += 200_000;
            Samples++;
            Most = Math.Max(Most, GC.GetTotalMemory(forceFullCollection: true) - _first);
        }
    }
}
