using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.Core.Measurement;

/// <summary>Diameters with the day on which they were measured.</summary>
public sealed record DatedProfile(LocalDate On, IReadOnlyList<DiameterStation> Stations);
