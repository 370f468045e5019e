using System.Text.Json;
using ExamDocs.Core.Findings;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Working;

/// <summary>What a part held back, as it is stored for the parts after it.</summary>
/// <param name="Item">As a refusal has it.</param>
/// <param name="Codes">As a refusal has them.</param>
/// <param name="What">In English.</param>
internal sealed record JobRefusal(string Item, IReadOnlyList<string> Codes, string What)
{
    public static string ToJson(IEnumerable<Refusal> refused) =>
        JsonSerializer.Serialize(refused.Select(r => new JobRefusal(r.Item, r.Codes, r.What.ToString())));

    /// <exception cref="InvalidDataException">It is not as it was stored.</exception>
    public static IEnumerable<Refusal> Read(IEnumerable<string> parts)
    {
        try
        {
            return
            [
                .. parts
                    .SelectMany(json => JsonSerializer.Deserialize<JobRefusal[]>(json) ?? [])
                    .Select(r => new Refusal(r.Item, r.Codes, Message.AsIs(r.What))),
            ];
        }
        catch (JsonException altered)
        {
            throw new InvalidDataException("what parts of the job held back is no longer as it was stored", altered);
        }
    }

    public static string Sentence(Refusal refusal) => $"{refusal.Item}: no {refusal.What}: {string.Join(' ', refusal.Codes)}";
}
