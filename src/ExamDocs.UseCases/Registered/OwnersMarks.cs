using ExamDocs.Core.Identity;
using ExamDocs.Register;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// Which visits recorded an owner's mark. A register has keys of ids and serial numbers, none of marks: the marks of all items that
/// have one are looked through once.
/// </summary>
internal sealed class OwnersMarks
{
    private readonly ILookup<string, int> _visits;

    public OwnersMarks(DocumentRegister register) =>
        _visits = register
            .Visits.OwnersMarks()
            .SelectMany(m => Folded.Keys(m.Mark), (m, key) => (m.Visit, key))
            .OrderBy(m => m.Visit)
            .ToLookup(m => m.key, m => m.Visit, StringComparer.Ordinal);

    /// <summary>The visits in which an item bears this mark, however it is spelt.</summary>
    public IReadOnlyList<int> VisitsOf(string mark) => [.. Folded.Keys(mark).SelectMany(k => _visits[k]).Distinct()];
}
