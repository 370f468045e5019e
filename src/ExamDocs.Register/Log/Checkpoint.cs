using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace ExamDocs.Register.Log;

/// <summary>
/// How long a register's log was and what its root was then: the text of a C2SP tlog-checkpoint note
/// (https://c2sp.org/tlog-checkpoint), without extension lines.
/// </summary>
public sealed class Checkpoint
{
    private const string OriginStart = "examdocs-register/";

    /// <param name="origin">The register's own id: examdocs-register/ and 32 lower-case hexadecimal digits.</param>
    /// <param name="size">Number of entries, 0 or more.</param>
    /// <param name="root">Of the tree over them, 32 octets.</param>
    /// <exception cref="ArgumentException">A value is not as described.</exception>
    public Checkpoint(string origin, long size, ReadOnlySpan<byte> root)
    {
        if (!IsOrigin(origin))
            throw new ArgumentException("A register's id is needed.", nameof(origin));
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        if (root.Length != MerkleTree.HashLength)
            throw new ArgumentException("32 octets are needed.", nameof(root));
        (Origin, Size, Root) = (origin, size, root.ToArray());
    }

    /// <summary>The id of the register.</summary>
    public string Origin { get; }

    /// <summary>Number of entries.</summary>
    public long Size { get; }

    /// <summary>Of the tree over them.</summary>
    public ReadOnlyMemory<byte> Root { get; }

    /// <summary>The origin of a register.</summary>
    /// <param name="id">Drawn once for each register.</param>
    public static string OriginOf(Guid id) => OriginStart + id.ToString("N", CultureInfo.InvariantCulture);

    /// <summary>Whether a text is <c>examdocs-register/</c> and 32 lower-case hexadecimal digits.</summary>
    public static bool IsOrigin([NotNullWhen(true)] string? text) =>
        text is not null
        && text.Length == OriginStart.Length + 32
        && text.StartsWith(OriginStart, StringComparison.Ordinal)
        && text[OriginStart.Length..].All(c => char.IsAsciiHexDigitLower(c));

    /// <summary>Reads a body exactly as <see cref="Body"/> writes it; nothing looser.</summary>
    public static bool TryParse(string? body, [NotNullWhen(true)] out Checkpoint? checkpoint)
    {
        checkpoint = null;
        var lines = body?.Split('\n') ?? [];
        var root = new byte[MerkleTree.HashLength];
        if (
            lines.Length != 4
            || !IsOrigin(lines[0])
            || !long.TryParse(lines[1], NumberStyles.None, CultureInfo.InvariantCulture, out var size)
            || !Convert.TryFromBase64String(lines[2], root, out var written)
            || written != root.Length
        )
        {
            return false;
        }
        var read = new Checkpoint(lines[0], size, root);
        checkpoint = string.Equals(read.Body(), body, StringComparison.Ordinal) ? read : null;
        return checkpoint is not null;
    }

    /// <summary>Origin, size in decimal and root in base64, each ended by a newline.</summary>
    public string Body() => string.Create(CultureInfo.InvariantCulture, $"{Origin}\n{Size}\n{Convert.ToBase64String(Root.Span)}\n");
}
