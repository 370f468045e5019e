using ExamDocs.Core.Determination;
using ExamDocs.Register;
using ExamDocs.Register.Model;

namespace ExamDocs.UseCases.Issuing;

/// <summary>
/// The versions of one visit's record up to this one in the register, and the documents that were made from them. Of a later version, which
/// another run may store meanwhile, nothing is taken back for the sake of this one.
/// </summary>
internal sealed class EarlierVersions
{
    private readonly DocumentRegister _register;
    private readonly int _number;
    private readonly HashSet<int> _others;
    private readonly ILookup<(string Kind, string Key), DocumentStatus> _current;

    private EarlierVersions(DocumentRegister register, int number, HashSet<int> others, IReadOnlyList<DocumentStatus> current)
    {
        (_register, _number, _others) = (register, number, others);
        _current = ByItem(current);
        OfOthers = [.. current.Where(d => IsOfOther(d))];
    }

    /// <summary>Current documents of other versions, as they were when this was asked.</summary>
    public IReadOnlyList<DocumentStatus> OfOthers { get; }

    /// <param name="register">The register.</param>
    /// <param name="visit">One version.</param>
    /// <param name="number">Its number in the register.</param>
    public static EarlierVersions Of(DocumentRegister register, DeterminedVisit visit, int number)
    {
        if (visit.Record.Visit is not { Reference: { } reference } typed)
            return new(register, number, [], []);
        var others = register
            .Visits.OfReference(reference)
            .Where(v => v.Visit < number && v.MayBeVersion(typed.ExaminedOn, typed.Employer?.Name))
            .Select(v => v.Visit)
            .ToHashSet();
        return new(register, number, others, [.. others.Append(number).Order().SelectMany(register.CurrentOf)]);
    }

    public bool IsOfOther(DocumentStatus document) => document.Visit is { } of && _others.Contains(of);

    /// <summary>Current documents of a job's kind about any of its items, of this version and of others.</summary>
    public IReadOnlyList<DocumentStatus> Like(DocumentJob job) =>
        [
            .. job
                .Items.SelectMany(i => ItemIds.Keys(i.Item.Id))
                .SelectMany(key => _current[(job.Type.Kind, key)])
                .Where(d => IsCopy(d) == IsCopy(job))
                .DistinctBy(d => d.Number, StringComparer.Ordinal),
        ];

    /// <summary>
    /// Documents of other versions, in the job's language, that were replaced in other languages only: the job replaces them in its own.
    /// </summary>
    public IEnumerable<DocumentStatus> ReplacedInOtherLanguages(DocumentJob job) =>
        from document in ItemIds
            .Keys(job.Items[0].Item.Id)
            .SelectMany(key => Replaced[(job.Type.Kind, key)])
            .DistinctBy(d => d.Number, StringComparer.Ordinal)
        where
            IsCopy(document) == IsCopy(job)
            && IsIn(document, job)
            && document.ReplacedBy.All(r => _register.Find(r) is { } other && !IsIn(other, job))
        select document;

    private ILookup<(string Kind, string Key), DocumentStatus> Replaced =>
        field ??= ByItem(_others.Order().SelectMany(_register.Of).Where(d => d is { Ended: DocumentEnd.Replaced, ReplacedBy.Count: > 0 }));

    private static ILookup<(string Kind, string Key), DocumentStatus> ByItem(IEnumerable<DocumentStatus> documents) =>
        documents.SelectMany(d => d.Items.SelectMany(ItemIds.Keys).Select(key => (d, key))).ToLookup(p => (p.d.Kind, p.key), p => p.d);

    private static bool IsIn(DocumentStatus document, DocumentJob job) =>
        string.Equals(document.Language, job.Language.Tag, StringComparison.Ordinal);

    private static bool IsCopy(DocumentStatus document) => document.CopyOf is not null;

    private static bool IsCopy(DocumentJob job) => job.CopyOf is not null;
}
