using ExamDocs.Core.Records;
using ExamDocs.Intake.Photos;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Reading;

/// <summary>
/// The photos of a visit, by the very observation that names each: inputs that are decided together may name different
/// files alike.
/// </summary>
internal sealed class VisitPhotos
{
    private readonly Dictionary<Observation, PhotoPrint> _prints = new(ReferenceEqualityComparer.Instance);

    public void Add(Observation observation, PreparedPhoto photo) =>
        _prints[observation] = new PhotoPrint(photo.Jpeg, photo.WidthPx, photo.HeightPx);

    /// <summary>Null where the observation names none, or none that can be printed.</summary>
    public PhotoPrint? Of(Observation observation) => _prints.GetValueOrDefault(observation);
}
