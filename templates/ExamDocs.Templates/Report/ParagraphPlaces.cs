using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Report;

/// <summary>Where a report has what a paragraph of the law asks for.</summary>
public enum ParagraphPlace
{
    /// <summary>Once, on the first page or with the signatures.</summary>
    Once,

    /// <summary>In the heading of the item's group.</summary>
    Group,

    /// <summary>In the item's own line.</summary>
    Line,

    /// <summary>In a block of the item's own, always.</summary>
    Block,

    /// <summary>Nowhere that the program knows: a paragraph of a regime that the user added.</summary>
    Unknown,
}

/// <summary>What some laws ask for beyond what every report has.</summary>
[Flags]
public enum LawAsks
{
    Nothing = 0,

    /// <summary>Days of purchase and first use.</summary>
    Purchase = 1,

    /// <summary>The maker's documents and the declaration.</summary>
    Documents = 2,

    /// <summary>What was examined.</summary>
    Scope = 4,

    /// <summary>That the report is annexed to a register.</summary>
    Register = 8,
}

/// <summary>For each regime, the place of each paragraph of its schedule. An item in a block has all of them there, but for those that
/// stand once.</summary>
internal static class ParagraphPlaces
{
    private static readonly Dictionary<string, (string Paragraph, ParagraphPlace[] Places)[]> OfRegime = new(StringComparer.Ordinal)
    {
        ["gb-loler"] = Lifting(),
        ["ni-loler"] = Lifting(),
        ["gb-wah"] = [("12(6)", [ParagraphPlace.Line])],
        ["eu-en365"] =
        [
            ("a", [ParagraphPlace.Group]),
            ("b", [ParagraphPlace.Group]),
            ("c", [ParagraphPlace.Line]),
            ("d", [ParagraphPlace.Line]),
            ("e", [ParagraphPlace.Line]),
            ("f", [ParagraphPlace.Line]),
            ("g", [ParagraphPlace.Line]),
            ("h", [ParagraphPlace.Group, ParagraphPlace.Line]),
            ("i", [ParagraphPlace.Once]),
            ("j", [ParagraphPlace.Line]),
        ],
        ["de"] =
        [
            ("14(7) type", [ParagraphPlace.Group]),
            ("8.3.1(2) occasion", [ParagraphPlace.Group]),
            ("14(7) scope", [ParagraphPlace.Group]),
            ("14(7) result", [ParagraphPlace.Line]),
            ("14(7) signature", [ParagraphPlace.Once]),
        ],
        ["fr"] =
        [
            ("R4323-100", [ParagraphPlace.Once]),
            ("R4323-101", [ParagraphPlace.Line]),
            ("R4323-102", [ParagraphPlace.Once]),
            ("3", [ParagraphPlace.Group, ParagraphPlace.Line]),
        ],
        ["au-nz"] = [("9", [ParagraphPlace.Once, ParagraphPlace.Group, ParagraphPlace.Line])],
        ["us"] = [("Z359.2", [ParagraphPlace.Once, ParagraphPlace.Line]), ("Title 8", [ParagraphPlace.Group])],
    };

    /// <summary>Each place that the regime's paragraphs have, with these; in the order of a report.</summary>
    public static IReadOnlyList<(ParagraphPlace Place, IReadOnlyList<Particular> Paragraphs)> Of(Regime regime, LocalDate? day) =>
        [
            .. regime
                .Particulars.InForce(day)
                .SelectMany(p => PlacesOf(regime, p.Paragraph).Select(place => (Place: place, Particular: p)))
                .GroupBy(p => p.Place, p => p.Particular)
                .OrderBy(g => g.Key)
                .Select(g => (g.Key, (IReadOnlyList<Particular>)[.. g])),
        ];

    public static LawAsks Asks(Regime regime) =>
        regime switch
        {
            { AddedFrom: not null } => LawAsks.Nothing,
            { Id: "eu-en365" } => LawAsks.Purchase,
            { Id: "de" } => LawAsks.Scope,
            { Id: "fr" } => LawAsks.Documents | LawAsks.Register,
            _ => LawAsks.Nothing,
        };

    private static IReadOnlyList<ParagraphPlace> PlacesOf(Regime regime, string paragraph) =>
        regime.AddedFrom is null
        && OfRegime.TryGetValue(regime.Id, out var places)
        && Array.Find(places, p => string.Equals(p.Paragraph, paragraph, StringComparison.Ordinal)).Places is { } known
            ? known
            : [ParagraphPlace.Unknown];

    private static (string Paragraph, ParagraphPlace[] Places)[] Lifting() =>
        [
            ("1", [ParagraphPlace.Once]),
            ("2", [ParagraphPlace.Once]),
            ("3", [ParagraphPlace.Line]),
            ("4", [ParagraphPlace.Line]),
            ("5", [ParagraphPlace.Group]),
            ("6(a)", [ParagraphPlace.Block]),
            ("6(b)", [ParagraphPlace.Block]),
            ("7(a)", [ParagraphPlace.Group]),
            ("7(b)", [ParagraphPlace.Group]),
            ("8(a)", [ParagraphPlace.Group]),
            ("8(b)", [ParagraphPlace.Group]),
            ("8(c)", [ParagraphPlace.Group]),
            ("8(d)", [ParagraphPlace.Line]),
            ("8(e)", [ParagraphPlace.Group]),
            ("8(f)", [ParagraphPlace.Group]),
            ("9", [ParagraphPlace.Once]),
            ("10", [ParagraphPlace.Once]),
            ("11", [ParagraphPlace.Once]),
        ];
}
