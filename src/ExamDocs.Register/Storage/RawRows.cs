using System.Data.Common;
using System.Globalization;
using ExamDocs.Register.Log;

namespace ExamDocs.Register.Storage;

/// <summary>A column of a row as it is stored.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Stored">What the database gave; of bytes, what <see cref="RawRows.Written"/> says of them.</param>
internal readonly record struct RawColumn(string Name, object? Stored)
{
    /// <summary>As a text; one that is not a text says what it is.</summary>
    public string? Value => RawRows.Written(Stored);

    /// <summary>Whether a value gives the same text.</summary>
    public bool Is(object? value) =>
        (Stored, value) switch
        {
            // Most are alike, and are known to be without being written.
            (string stored, string expected) when string.Equals(stored, expected, StringComparison.Ordinal) => true,
            (int stored, int expected) => stored == expected,
            (long stored, int expected) => stored == expected,
            _ => string.Equals(Value, RawRows.Written(value), StringComparison.Ordinal),
        };
}

/// <summary>Rows as they are stored, whatever is in them: nothing is parsed, so that nothing can be unreadable.</summary>
internal static class RawRows
{
    /// <summary>The columns of each row.</summary>
    public static List<RawColumn[]> Raw(this DbConnection connection, string text, params object?[] values)
    {
        // All rows of one answer have the same columns.
        string[]? names = null;
        return connection.Rows(
            row =>
            {
                names ??= [.. Enumerable.Range(0, row.FieldCount).Select(row.GetName)];
                var columns = new RawColumn[names.Length];
                for (var i = 0; i < columns.Length; i++)
                {
                    var value = row.GetValue(i);
                    columns[i] = new(names[i], value is byte[] ? Written(value) : value);
                }
                return columns;
            },
            text,
            values
        );
    }

    /// <summary>A value as <see cref="Raw"/> gives it back once it is stored.</summary>
    public static string? Written(object? value) =>
        value switch
        {
            null or DBNull => null,
            string text => StorableText.Of(text),
            byte[] bytes => $"(bytes {Sha256Hex.Of(bytes)})",
            bool or int or long or short =>
                $"({Convert.ToInt64(value, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture)})",
            _ => $"({value.GetType().Name} {Convert.ToString(value, CultureInfo.InvariantCulture)})",
        };

    /// <summary>One sentence for each column that is not as it should be, or for rows too many or too few.</summary>
    /// <param name="what">What the rows are of, for example visit 3.</param>
    /// <param name="table">The table that they are in.</param>
    /// <param name="stored">As <see cref="Raw"/> gives them.</param>
    /// <param name="expected">What each row should hold, in the order of its columns.</param>
    /// <param name="source">What says so, for example its record.</param>
    public static IEnumerable<string> Differences(
        string what,
        string table,
        List<RawColumn[]> stored,
        IReadOnlyList<object?[]> expected,
        string source
    )
    {
        if (stored.Count != expected.Count)
        {
            yield return FormattableString.Invariant($"{what}: {stored.Count} rows of {table}, {source} gives {expected.Count}.");
            yield break;
        }
        for (var row = 0; row < expected.Count; row++)
        {
            for (var column = 0; column < expected[row].Length; column++)
            {
                var (there, should) = (column < stored[row].Length ? stored[row][column] : new("a column", null), expected[row][column]);
                if (!there.Is(should))
                    yield return $"{what}: {there.Name} of {table} is {Shown(there.Value)}, {source} gives {Shown(Written(should))}.";
            }
        }
    }

    private static string Shown(string? value) =>
        value is null ? "empty"
        : value.Length > 60 ? $"\"{value[..60]}...\""
        : $"\"{value}\"";
}
