using ExamDocs.Core.Records;
using ExamDocs.Intake.Photos;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Reading;

/// <summary>
/// The photos of a visit, by the observation that names each. A name is not enough: inputs that are decided together may use one name
/// for different files.
/// </summary>
internal sealed class VisitPhotos
{
    private readonly Dictionary<Observation, PhotoPrint> _prints = new(ReferenceEqualityComparer.Instance);

    public void Add(Observation observation, PreparedPhoto photo) =>
        _prints[observation] = new PhotoPrint(photo.Jpeg, photo.WidthPx, photo.HeightPx);

    /// <summary>The photo of an observation; null where it names none, or none that can be printed.</summary>
    public PhotoPrint? Of(Observation observation) => _prints.GetValueOrDefault(observation);
}
