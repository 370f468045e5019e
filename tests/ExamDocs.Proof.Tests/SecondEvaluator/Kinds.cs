using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>One criterion as the printed catalogue gives it.</summary>
public sealed record Criterion(string Id, string Class, bool Required, bool Noted, bool NotApplicable, bool NoSign, bool NeverReleasable);

/// <summary>One category as the printed catalogue gives it.</summary>
public sealed record Kind(string Id, string Material, IReadOnlyDictionary<string, Criterion> Criteria);

/// <summary>The catalogue, read from its printed JSON.</summary>
public static class Kinds
{
    public static IReadOnlyDictionary<string, Kind> All { get; } = Read(Text());

    public static string Text()
    {
        using var stream = typeof(Kinds).Assembly.GetManifestResourceStream("catalogue.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static Dictionary<string, Kind> Read(string json)
    {
        using var document = JsonDocument.Parse(json);
        return document.RootElement.EnumerateArray().Select(ReadKind).ToDictionary(kind => kind.Id, StringComparer.Ordinal);
    }

    private static Kind ReadKind(JsonElement kind) =>
        new(
            kind.Text("id")!,
            kind.Text("material")!,
            kind.List("criteria").Select(ReadCriterion).ToDictionary(criterion => criterion.Id, StringComparer.Ordinal)
        );

    private static Criterion ReadCriterion(JsonElement c) =>
        new(
            c.Text("id")!,
            c.Text("class")!,
            c.Yes("required"),
            c.Yes("allowsNoted"),
            c.Yes("allowsNotApplicable"),
            c.Yes("allowsNoSign"),
            c.Yes("neverReleasable")
        );
}
