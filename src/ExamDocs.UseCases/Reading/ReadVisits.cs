using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Known;
using ExamDocs.Core.Regimes;
using ExamDocs.Intake;
using ExamDocs.Intake.Merging;
using ExamDocs.Intake.Photos;
using ExamDocs.UseCases.Commands;

namespace ExamDocs.UseCases.Reading;

/// <summary>A visit that was read, from one input or several, and is not decided yet.</summary>
/// <param name="Path">The first of them as the user named it.</param>
/// <param name="Read">What was read.</param>
internal sealed record ReadVisits(string Path, ReadResult Read)
{
    /// <summary>Why nothing can be decided; null where it can.</summary>
    public string? Unreadable { get; } =
        Read.Record is { } record ? RecordSizeLimit.Of(record, Read.Findings) : Read.Unreadable ?? "it cannot be read";

    private VisitPhotos? Photos { get; init; }

    /// <param name="paths">In any order: each as <see cref="CheckRecord.Of"/> takes it.</param>
    /// <param name="rules">The categories and regimes they can name.</param>
    /// <param name="photos">Keeps the photos for printing; null to check them only.</param>
    public static IReadOnlyList<ReadVisits> From(IReadOnlyList<string> paths, KnownRules? rules, VisitPhotos? photos = null)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var visits = new List<List<(string Path, ReadResult Read)>>();
        foreach (var input in paths.SelectMany(FolderOfWorkbooks.InputsOf).Select(path => (path, Read: OneInput(path, rules, photos))))
        {
            if (visits.Find(v => IsOneVisit(v[0].Read, input.Read)) is { } visit)
                visit.Add(input);
            else
                visits.Add([input]);
        }
        return [.. visits.Select(v => new ReadVisits(v[0].Path, MergeInputs.Of([.. v.Select(i => i.Read)])) { Photos = photos })];
    }

    /// <param name="visit">As decided; null where the input is unreadable.</param>
    public CheckedInput Checked(DeterminedVisit? visit) =>
        visit is null
            ? new(Path, null, Read.Sources, Unreadable)
            : new CheckedInput(Path, visit, Read.Sources, null) { Photos = Photos ?? new VisitPhotos(), UnreadRows = Read.UnreadRows };

    private static ReadResult OneInput(string path, KnownRules? rules, VisitPhotos? photos)
    {
        var read = ReadInput.From(path, rules);
        return read is { Record: { } record, PhotosAreElsewhere: false }
            ? read with
            {
                Findings = [.. read.Findings, .. RecordPhotos.Check(record, FolderOf(path), photos is null ? null : photos.Add)],
            }
            : read;
    }

    /// <summary>The folder that names of photos are relative to: that of the record's file, or the folder of files itself.</summary>
    internal static string FolderOf(string path) =>
        Directory.Exists(path) ? path : System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path))!;

    /// <summary>Whether two inputs have one reference, as typed or, for one employer, however it is spelt.</summary>
    private static bool IsOneVisit(ReadResult one, ReadResult other) =>
        one.Record is { Visit.Reference: { } reference } record
        && other.Record is { } second
        && (string.Equals(reference, second.Visit.Reference, StringComparison.Ordinal) || KnownVisit.IsOneVisit(record, second));
}
