using System.Globalization;
using System.Text.Json;

namespace ExamDocs.Intake.Json;

/// <summary>Finds where in a record a value stands. It reads the file a second time, so that nothing is kept where all is well.</summary>
internal static class JsonPointer
{
    /// <summary>Longest name of a member that is shown.</summary>
    private const int MostOfName = 80;

    /// <param name="utf8">The file, sound up to the value.</param>
    /// <param name="start">First byte of the value.</param>
    public static string Of(ReadOnlySpan<byte> utf8, long start)
    {
        var steps = new Stack<(string? Name, int Index)>();
        var reader = new Utf8JsonReader(utf8);
        while (reader.Read() && reader.TokenStartIndex < start)
        {
            if (reader.TokenType is JsonTokenType.PropertyName)
                Replace(steps, (Shown(ref reader), 0));
            else if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                _ = steps.Pop();
            else
                Count(steps);
            if (reader.TokenType is JsonTokenType.StartObject)
                steps.Push(("", 0));
            else if (reader.TokenType is JsonTokenType.StartArray)
                steps.Push((null, -1));
        }
        Count(steps);
        return "#" + string.Concat(steps.Reverse().Select(s => "/" + (s.Name ?? s.Index.ToString(CultureInfo.InvariantCulture))));
    }

    private static string Shown(ref Utf8JsonReader reader) =>
        reader.ValueSpan.Length > MostOfName
            ? "…"
            : reader.GetString()!.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);

    private static void Count(Stack<(string? Name, int Index)> steps)
    {
        if (steps.TryPeek(out var top) && top.Name is null)
            Replace(steps, (null, top.Index + 1));
    }

    private static void Replace(Stack<(string? Name, int Index)> steps, (string? Name, int Index) step)
    {
        _ = steps.Pop();
        steps.Push(step);
    }
}
