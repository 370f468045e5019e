using System.Globalization;
using ExamDocs.Core.Statistics;

namespace ExamDocs.Core.Tests.Statistics;

/// <summary>Published lifetimes; a plus sign marks a censored one.</summary>
internal static class PublishedLifetimes
{
    /// <summary>Freireich et al., Blood 21:699-716 (1963): weeks of remission under 6-mercaptopurine.</summary>
    public static IReadOnlyList<Lifetime> Mercaptopurine { get; } =
        Of("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+");

    /// <summary>The same trial: weeks under placebo.</summary>
    public static IReadOnlyList<Lifetime> Placebo { get; } = Of("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23");

    /// <summary>Acute myelogenous leukaemia, Miller, Survival Analysis (1981, 1997): weeks with maintained chemotherapy.</summary>
    public static IReadOnlyList<Lifetime> Maintained { get; } = Of("9 13 13+ 18 23 28+ 31 34 45+ 48 161+");

    /// <summary>The same study, not maintained.</summary>
    public static IReadOnlyList<Lifetime> NotMaintained { get; } = Of("5 5 8 8 12 16+ 23 27 30 33 43 45");

    public static IReadOnlyList<Lifetime> Of(string weeks) =>
        [.. weeks.Split(' ').Select(w => new Lifetime(double.Parse(w.TrimEnd('+'), CultureInfo.InvariantCulture), !w.EndsWith('+')))];
}
