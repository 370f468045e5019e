using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Determination;

/// <summary>Turns what was recorded into words for reasons and findings.</summary>
internal static class Say
{
    public static string Day(LocalDate day) => day.ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    public static string Number(decimal number) => (number / 1.000000000000000000000000000000000m).ToString(CultureInfo.InvariantCulture);

    /// <summary>The item's id, or its place where it has none.</summary>
    public static string Name(ItemCase item) => item.Item.Id ?? item.Item.Description ?? "an item without an id";

    /// <summary>The criterion with the examiner's note, or with its question where there is none.</summary>
    public static string Observed(Observation observation, string? question)
    {
        var criterion = observation.Criterion ?? "a criterion not named";
        return (observation.Note ?? question) is { } words ? $"{criterion}: {words}" : criterion;
    }
}
