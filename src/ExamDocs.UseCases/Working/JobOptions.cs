using System.Text.Json;
using System.Text.Json.Serialization;
using ExamDocs.Templates;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Working;

/// <summary>How a job is to be issued, as it is stored with it. It comes from another machine, and is read like any input.</summary>
internal sealed record JobOptions
{
    private const int MostInputs = 1000;

    private const int MostLetters = 2000;

    private static readonly JsonSerializerOptions Strict = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        AllowDuplicateProperties = false,
        MaxDepth = 4,
    };

    /// <summary>Which files of the job, or folders of them, are inputs.</summary>
    public required IReadOnlyList<string> Inputs { get; init; }

    public required string Language { get; init; }

    public bool PerItem { get; init; }

    /// <summary>Null for all that a visit calls for by itself.</summary>
    public string? Only { get; init; }

    public string? Reason { get; init; }

    public decimal? ReadFromMetres { get; init; }

    public decimal? SignFactor { get; init; }

    /// <summary>The folder of the user's own rules among the files; null where there is none.</summary>
    public string? Rules { get; init; }

    /// <summary>The letterhead among the files; null where there is none.</summary>
    public string? Letterhead { get; init; }

    public string ToJson() => JsonSerializer.Serialize(this, Strict);

    /// <exception cref="JobRefusedException">They are not options that this version knows.</exception>
    public static JobOptions Read(string json)
    {
        try
        {
            var options = JsonSerializer.Deserialize<JobOptions>(json, Strict);
            return options is not null && options.IsSound()
                ? options
                : throw new JobRefusedException("how it is to be issued is not said in a way that this version knows");
        }
        catch (JsonException unread)
        {
            throw new JobRefusedException("how it is to be issued is not said in a way that this version knows", unread);
        }
    }

    private bool IsSound() =>
        Inputs.Count is > 0 and <= MostInputs
        && Inputs.Append(Rules ?? "x").Append(Letterhead ?? "x").All(TemporaryFolder.IsPlain)
        && ReadPrintStyle.Languages.Contains(Language, StringComparer.Ordinal)
        && (Only is null || DocumentTypes.All.Any(t => string.Equals(t.Kind, Only, StringComparison.Ordinal)))
        && Reason is not { Length: > MostLetters }
        && ReadPrintStyle.ObjectionToReading(ReadFromMetres, SignFactor) is null;
}

/// <summary>A job that cannot be issued as it was given, however often it is tried.</summary>
/// <param name="why">In a sentence, or a line for each reason.</param>
internal sealed class JobRefusedException(string why, Exception? inner = null) : Exception(why, inner);
