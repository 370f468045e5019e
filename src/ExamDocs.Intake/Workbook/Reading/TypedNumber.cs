using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Workbook.Reading;

/// <summary>How a number was typed as text.</summary>
internal enum TypedNumberKind
{
    /// <summary>No number at all.</summary>
    None,

    /// <summary>It can be read in one way only.</summary>
    Plain,

    /// <summary>A comma stands before its decimals.</summary>
    DecimalComma,

    /// <summary>1.250: a point before three digits, which where commas stand before decimals would be a thousand and more.</summary>
    PointBeforeThree,

    /// <summary>1,250: a thousand and more in one country, one and a quarter in another.</summary>
    CommaBeforeThree,
}

/// <summary>
/// Reads a number typed as text, with a point or a comma before the decimals, and with blanks, thin and no-break ones
/// included, or apostrophes between groups of three digits.
/// </summary>
/// <param name="Plain">As the record format has it, with a point; null where it is not a number, or can be read in two ways.</param>
internal sealed partial record TypedNumber(TypedNumberKind Kind, string? Plain)
{
    public static TypedNumber Of(string typed)
    {
        var text = Grouped().IsMatch(typed) ? Between().Replace(typed, "") : typed;
        if (Pointed().IsMatch(text))
            return new(BeforeThree().IsMatch(text) ? TypedNumberKind.PointBeforeThree : TypedNumberKind.Plain, text);
        if (!Commaed().IsMatch(text))
            return new(TypedNumberKind.None, null);
        return BeforeThree().IsMatch(text)
            ? new(TypedNumberKind.CommaBeforeThree, null)
            : new(TypedNumberKind.DecimalComma, text.Replace(',', '.'));
    }

    [GeneratedRegex(
        @"\A[+-]?[0-9]{1,3}([ \u00A0\u2009\u202F'\u2019][0-9]{3})+([.,][0-9]+)?\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Grouped();

    [GeneratedRegex(@"[ \u00A0\u2009\u202F'\u2019]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Between();

    [GeneratedRegex(@"\A[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pointed();

    [GeneratedRegex(@"\A[+-]?[0-9]*,[0-9]+\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Commaed();

    /// <summary>A leading zero says that decimals follow: 0,250 is a quarter everywhere.</summary>
    [GeneratedRegex(@"\A[+-]?[1-9][0-9]{0,2}[.,][0-9]{3}\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex BeforeThree();
}
