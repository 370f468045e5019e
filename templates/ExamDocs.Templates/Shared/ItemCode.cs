using System.Text;

namespace ExamDocs.Templates.Shared;

/// <summary>Room for a code, with its quiet zone.</summary>
/// <param name="ModuleMm">Side of one module, millimetres.</param>
/// <param name="MostMm">Longest side of the code, millimetres, inclusive.</param>
public readonly record struct CodeRoom(decimal ModuleMm, decimal MostMm);

/// <summary>The QR code on a paper or label, in the size in which it is drawn.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Matrix">Null where not even the first line has room; the paper then says it in words alone.</param>
/// <param name="ModuleMm">Side of one module, millimetres.</param>
public sealed record ItemCode(string Text, QrMatrix? Matrix, decimal ModuleMm)
{
    // A code of more bytes has no room on any label; trying it would throw beyond 2,331.
    private const int MostBytes = 600;

    // Of papers: three dots of a printer of 203 dots to the inch, and no code wider than the block that it stands in.
    private static readonly CodeRoom[] OnPaper = [new(0.5m, 20), new(0.375m, 27.5m), new(0.5m, 36.5m)];

    /// <summary>Whether the code says more than its first line.</summary>
    public bool IsWhole => Text.Contains('\n', StringComparison.Ordinal);

    public decimal SideMm => Matrix is null ? 0 : Matrix.Modules * ModuleMm;

    /// <summary>On a sheet of paper.</summary>
    public static ItemCode Of(CodeText text) => Of(text, OnPaper);

    /// <summary>The longest text that has room, in the first room that holds it; no code where there is none.</summary>
    public static ItemCode Of(CodeText text, params IReadOnlyList<CodeRoom> rooms) => Choices(text, rooms).FirstOrDefault() ?? None(text);

    /// <summary>Without a code: the words stand alone.</summary>
    public static ItemCode None(CodeText text) => new(text.First.ToString(), null, 0);

    /// <summary>Every code that has room, the longest text first, made when it is asked for: most want the first alone.</summary>
    /// <param name="text">What it is to say.</param>
    /// <param name="rooms">The one liked best first.</param>
    public static IEnumerable<ItemCode> Choices(CodeText text, params IReadOnlyList<CodeRoom> rooms) =>
        from version in text.Versions.Distinct(StringComparer.Ordinal)
        where Encoding.UTF8.GetByteCount(version) <= MostBytes
        let matrix = QrMatrix.Of(version)
        from room in rooms
        where matrix.Modules * room.ModuleMm <= room.MostMm
        select new ItemCode(version, matrix, room.ModuleMm);
}
