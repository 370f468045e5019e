using ExamDocs.Core.Service;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>Lists the models that the records of a register tell of, with the makers' limits used last and their source.</summary>
public static class ListModels
{
    /// <param name="place">The register.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="InvalidDataException">A record is not as it was stored.</exception>
    public static IReadOnlyList<ModelOnRecord> In(string place, LocalDate today) => RegisteredModels.In(place, today).Models;
}
