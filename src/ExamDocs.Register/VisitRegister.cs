using ExamDocs.Core.Identity;
using ExamDocs.Core.Records;
using ExamDocs.Register.Model;
using ExamDocs.Register.Rows;

namespace ExamDocs.Register;

/// <summary>
/// The visits that a register remembers, each as it was recorded. None is ever changed: a corrected record is a visit of its own, of the
/// same reference.
/// </summary>
public sealed class VisitRegister
{
    private readonly RegisterRows _rows;

    internal VisitRegister(RegisterRows rows) => _rows = rows;

    /// <summary>Number of the visit stored last; 0 where there is none.</summary>
    public int Latest => _rows.Visits.Latest;

    /// <summary>Remembers one visit, as <see cref="Remember(IReadOnlyList{VisitToRemember}, int?)"/> does.</summary>
    public (int Visit, bool IsNew) Remember(VisitToRemember visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return _rows.VisitStore.Remember([visit], null)![0];
    }

    /// <summary>
    /// Remembers visits that were decided together, in one transaction with what they end. A record that is the latest version
    /// of its visit already, with the same outcomes, is not stored again.
    /// </summary>
    /// <param name="visits">In the order in which they are to be numbered.</param>
    /// <param name="knownUpTo">The last visit that was known when they were decided; left out, that is not asked.</param>
    /// <returns>Number of each, and whether it is new; null, and nothing is stored, where another run stored visits since
    /// <paramref name="knownUpTo"/>.</returns>
    public IReadOnlyList<(int Visit, bool IsNew)>? Remember(IReadOnlyList<VisitToRemember> visits, int? knownUpTo = null)
    {
        ArgumentNullException.ThrowIfNull(visits);
        return _rows.VisitStore.Remember(visits, knownUpTo);
    }

    /// <summary>All, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> All() => _rows.Visits.All();

    /// <summary>The versions stored under one reference, however it is spelt, in the order stored.</summary>
    public IReadOnlyList<RememberedVisit> OfReference(string reference) => _rows.Visits.OfReference(reference);

    /// <summary>The owner's marks that visits recorded, each once for its visit.</summary>
    public IReadOnlyList<(int Visit, string Mark)> OwnersMarks() => _rows.Visits.OwnersMarks();

    /// <summary>The record of a visit, as stored.</summary>
    /// <exception cref="InvalidDataException">It is not there, or not as it was stored.</exception>
    public byte[] Record(int visit) => _rows.Visits.Record(visit);

    /// <summary>
    /// Visits in which an item of a record, or one that can be the same as it or be assembled with it, is named: by the keys of
    /// <see cref="ItemKeys"/>, over any number of other items between.
    /// </summary>
    /// <param name="record">The record that is to be decided.</param>
    /// <param name="upTo">The last visit that counts; left out, all do.</param>
    /// <param name="origin">The register in whose numbers <paramref name="upTo"/> is, for a visit that came from another; left out, this
    /// one.</param>
    /// <returns>In the order stored.</returns>
    public IReadOnlyList<TouchingVisit> Touching(ExaminationRecord record, int? upTo = null, string? origin = null)
    {
        ArgumentNullException.ThrowIfNull(record);
        return _rows.Visits.Of(new ConnectedVisits(_rows.Database, upTo, origin).To(ItemKeys.Of(record).Select(k => k.Key)));
    }

    /// <summary>The same visits, each compared with the log before it is given.</summary>
    /// <param name="read">Reads the record of a visit, given its number and bytes, on several threads at once; null where that is
    /// impossible.</param>
    public VisitsAsLogged AsLogged(Func<int, byte[], ExaminationRecord?> read) => new(_rows, read);

    /// <summary>What later visits ended of what the documents of a visit say: these lines are not to be printed again.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> EndsOf(int visit) => _rows.Documents.EndedLines.Of(visit);

    /// <summary>Everything ever decided of an id, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOf(string item) => _rows.Visits.OutcomesOf(item);

    /// <summary>Everything ever decided of items with a serial number, whatever its capitals, in the order stored.</summary>
    public IReadOnlyList<PastOutcome> OutcomesOfSerial(string serial) => _rows.Visits.OutcomesOfSerial(serial);

    /// <summary>Everything ever decided.</summary>
    public IReadOnlyList<PastOutcome> Outcomes() => _rows.Visits.Outcomes();
}
