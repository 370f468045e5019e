using ExamDocs.Core.Records;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>A model on record, with the makers' limits used last.</summary>
/// <param name="Limits">As the latest visit recorded them, with their source.</param>
/// <param name="LastUsed">The latest day examined of a visit that used them; null where none is recorded.</param>
/// <param name="IsDisputed">Records give different values under one title and revision.</param>
public sealed record ListedModel(MakersLimits Limits, LocalDate? LastUsed, bool IsDisputed);

/// <summary>Lists the models that the records of a register name, with the makers' limits used last and their source.</summary>
public static class ListModels
{
    /// <param name="place">The register.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="InvalidDataException">A record is not as it was stored.</exception>
    public static IReadOnlyList<ListedModel> In(string place, LocalDate today) =>
        [.. RegisteredModels.In(place, today).Models.Select(m => new ListedModel(m.Limits, m.LastUsed, m.IsDisputed))];
}
