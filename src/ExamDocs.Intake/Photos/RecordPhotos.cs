using System.Globalization;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Photos;

/// <summary>
/// Looks through all photos that a record names: each is opened, unpacked and made ready as for print, each file once
/// however often it is named.
/// </summary>
public static class RecordPhotos
{
    /// <param name="record">The record, as read.</param>
    /// <param name="folder">The folder in which it lies.</param>
    /// <param name="kept">Takes each photo that can be printed, by the very observation that names it; left out, none is kept.</param>
    /// <returns>A finding for each photo that cannot be printed, at the place where it is named.</returns>
    public static IReadOnlyList<Finding> Check(ExaminationRecord record, string folder, Action<Observation, PreparedPhoto>? kept = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        return Check(record, folder, new PhotoBudget(), kept);
    }

    internal static IReadOnlyList<Finding> Check(
        ExaminationRecord record,
        string folder,
        PhotoBudget budget,
        Action<Observation, PreparedPhoto>? kept = null
    )
    {
        var (findings, album) = (new List<Finding>(), new Album(folder, budget, keeps: kept is not null));
        foreach (var (examination, observation, pointer) in Named(record))
        {
            try
            {
                if (album.FaultOf(observation.Photo!) is { } fault)
                    findings.Add(fault.Rule.At(pointer, fault.Message, fault.Hint, examination.Item));
                else if (kept is not null)
                    kept(observation, album.Prepared(observation.Photo!));
            }
            catch (PhotosSpentException)
            {
                findings.Add(
                    PhotoRules.TooMany.At(
                        pointer,
                        $"the record names more photos than can be read; this one and those after it were not looked at",
                        item: examination.Item
                    )
                );
                break;
            }
        }
        return findings;
    }

    private static IEnumerable<(Examination Examination, Observation Observation, string Pointer)> Named(ExaminationRecord record) =>
        from e in record.Examinations.Index()
        from o in e.Item.Observations.Index()
        where !string.IsNullOrWhiteSpace(o.Item.Photo)
        select (e.Item, o.Item, string.Create(CultureInfo.InvariantCulture, $"/examinations/{e.Index}/observations/{o.Index}/photo"));

    /// <summary>What was found of each name and each file so far.</summary>
    private sealed class Album(string folder, PhotoBudget budget, bool keeps)
    {
        private readonly Dictionary<string, PreparedPhoto> _prepared = new(StringComparer.Ordinal);
        private readonly Dictionary<string, string> _pathOf = new(StringComparer.Ordinal);
        private readonly Dictionary<string, PhotoFault?> _byName = new(StringComparer.Ordinal);
        private readonly Dictionary<string, PhotoRefusedException?> _byFile = new(StringComparer.Ordinal);

        public PhotoFault? FaultOf(string name)
        {
            if (_byName.TryGetValue(name, out var known))
                return known;
            budget.Name();
            return _byName[name] = Refusal(name) is { } refused ? PreparePhoto.Fault(name, refused) : null;
        }

        /// <summary>The photo of a name that has no fault.</summary>
        public PreparedPhoto Prepared(string name) => _prepared[_pathOf[name]];

        private PhotoRefusedException? Refusal(string name)
        {
            try
            {
                var path = _pathOf[name] = PhotoPath.Find(folder, name);
                if (!_byFile.ContainsKey(path))
                    _byFile[path] = RefusalOf(path);
                return _byFile[path];
            }
            catch (PhotoRefusedException e)
            {
                return e;
            }
        }

        private PhotoRefusedException? RefusalOf(string path)
        {
            try
            {
                var file = PhotoFile.Read(path);
                budget.File(file.Length);
                if (!keeps && FoundPrintable.PixelsOf(PhotoFile.Sha256(file)) is { } pixels)
                {
                    budget.Pixels(pixels);
                    return null;
                }
                var prepared = PreparePhoto.From(file, budget);
                if (keeps)
                    _prepared[path] = prepared;
                return null;
            }
            catch (PhotoRefusedException e)
            {
                return e;
            }
        }
    }
}
