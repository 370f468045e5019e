using ExamDocs.Register;
using ExamDocs.Register.Model;
using NodaTime;

namespace ExamDocs.UseCases.Registered;

/// <summary>
/// What a register knew at the end of a day: the visits stored and the documents issued by then, and what of them had ended by then. What
/// a version before kept without its day counts as known.
/// </summary>
/// <param name="register">The register.</param>
/// <param name="day">The day; null for all that it knows.</param>
internal sealed class RegisterThen(DocumentRegister register, LocalDate? day)
{
    private readonly HashSet<int>? _later = day is null
        ? null
        : register.Visits.All().Where(v => v.StoredOn > day).Select(v => v.Visit).ToHashSet();

    public bool Knew(int visit) => _later is null || !_later.Contains(visit);

    public IReadOnlyList<RememberedVisit> Visits() => [.. register.Visits.All().Where(v => Knew(v.Visit))];

    /// <summary>What visits known later ended of what the documents of a visit say.</summary>
    public IReadOnlyList<(LineEnd End, int ByVisit)> EndsOf(int visit) => [.. register.Visits.EndsOf(visit).Where(e => Knew(e.ByVisit))];

    /// <summary>Documents issued from one visit.</summary>
    public IReadOnlyList<DocumentStatus> Of(int visit) => [.. register.Of(visit).Select(Then).OfType<DocumentStatus>()];

    /// <summary>The document of a number as it was then; null where it was not out.</summary>
    public DocumentStatus? Find(string number) => register.Find(number) is { } document ? Then(document) : null;

    /// <summary>An issued document as it was then; null where it was not out.</summary>
    public DocumentStatus? Then(DocumentStatus document)
    {
        if (day is not { } on)
            return document;
        if (document.IssuedOn > on)
            return null;
        var then = document with { EndedLines = [.. document.EndedLines.Where(l => Knew(l.ByVisit))] };
        return document.EndedOn > on ? then with { Ended = null, EndedOn = null, EndedReason = null, ReplacedBy = [] } : then;
    }
}
