using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>One item with what belongs to it, and what has been found out about it so far.</summary>
internal sealed class Kit
{
    public required int Position { get; init; }

    public required JsonElement Element { get; init; }

    public required string Id { get; init; }

    public Kind? Kind { get; init; }

    /// <summary>The examination that decides; null where there is none at this visit.</summary>
    public JsonElement? Examination { get; set; }

    /// <summary>Its position among the examinations.</summary>
    public int? ExaminationAt { get; set; }

    /// <summary>The day it was examined; the visit's where it was not.</summary>
    public DateOnly On { get; set; }

    public List<(JsonElement Examination, DateOnly On)> Earlier { get; } = [];

    /// <summary>Its own limits; where it is not known which they are, all that they may be. It has to keep each.</summary>
    public List<JsonElement> Limits { get; } = [];

    public List<Kit> Parts { get; } = [];

    public Kit? Whole { get; set; }

    public HashSet<string> Codes { get; } = [];

    public bool Unsure { get; set; }

    /// <summary>The last day of service, inclusive.</summary>
    public DateOnly? End { get; set; }

    /// <summary>The next date as counted from its own examination.</summary>
    public DateOnly? OwnNext { get; set; }

    public DateOnly? Until { get; set; }

    public bool Withdrawn => Codes.Any(code => code[0] == 'W');

    public bool Undetermined => Codes.Any(code => code[0] == 'U');

    public string Outcome =>
        Withdrawn ? "withdraw"
        : Undetermined ? "undetermined"
        : Until is null ? "fit"
        : "fit-until";

    public void Error() => Codes.Add("U3");
}
