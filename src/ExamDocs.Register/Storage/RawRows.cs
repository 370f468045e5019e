using System.Data.Common;
using System.Globalization;
using ExamDocs.Register.Log;

namespace ExamDocs.Register.Storage;

/// <summary>Rows as they are stored, whatever is in them: nothing is parsed, so that nothing can be unreadable.</summary>
internal static class RawRows
{
    /// <summary>The columns of each row, by name; a value that is not a text says what it is.</summary>
    public static List<(string Name, string? Value)[]> Raw(this DbConnection connection, string text, params object?[] values)
    {
        // All rows of one answer have the same columns.
        string[]? names = null;
        return connection.Rows(
            row =>
            {
                names ??= [.. Enumerable.Range(0, row.FieldCount).Select(row.GetName)];
                var columns = new (string Name, string? Value)[names.Length];
                for (var i = 0; i < columns.Length; i++)
                    columns[i] = (names[i], Written(row.GetValue(i)));
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
        List<(string Name, string? Value)[]> stored,
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
                var (name, value) = column < stored[row].Length ? stored[row][column] : ("a column", null);
                var should = Written(expected[row][column]);
                if (!string.Equals(value, should, StringComparison.Ordinal))
                    yield return $"{what}: {name} of {table} is {Shown(value)}, {source} gives {Shown(should)}.";
            }
        }
    }

    private static string Shown(string? value) =>
        value is null ? "empty"
        : value.Length > 60 ? $"\"{value[..60]}...\""
        : $"\"{value}\"";
}
