using System.Text.RegularExpressions;

namespace ExamDocs.UseCases.Issuing;

/// <summary>A composed page, with the pictures kept apart from the text.</summary>
/// <param name="Text">The HTML without what the pictures show.</param>
/// <param name="Pictures">Each as base64, in their order; empty for one of which only the place is known.</param>
internal sealed partial record ComposedPage(string Text, IReadOnlyList<string> Pictures)
{
    public static ComposedPage Of(string html) =>
        new(Picture().Replace(html, "${words}"), [.. Picture().Matches(html).Select(m => m.Groups["jpeg"].Value)]);

    /// <summary>Whether both show the same. Where only the place of a picture is known, it equals any picture there.</summary>
    public bool IsSameAs(ComposedPage other) =>
        string.Equals(Text, other.Text, StringComparison.Ordinal)
        && Pictures.Count == other.Pictures.Count
        && Pictures
            .Zip(other.Pictures)
            .All(p => p.First.Length == 0 || p.Second.Length == 0 || string.Equals(p.First, p.Second, StringComparison.Ordinal));

    /// <summary>A photo's size follows from what it shows.</summary>
    [GeneratedRegex(
        """src="data:image/jpeg;base64,(?<jpeg>[A-Za-z0-9+/=]*)"(?<words> alt="[^"]*")( width="[0-9]+" height="[0-9]+")?""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        10_000
    )]
    private static partial Regex Picture();
}
