using ExamDocs.Core.Identity;
using ExamDocs.Register;
using ExamDocs.UseCases.Company;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of a list of what falls due.</summary>
/// <param name="Register">The register.</param>
/// <param name="From">The first day, inclusive.</param>
/// <param name="To">The last day, inclusive.</param>
/// <param name="Today">The day on which the register is looked at.</param>
public sealed record DueRequest(string Register, LocalDate From, LocalDate To, LocalDate Today)
{
    /// <summary>Whose kit; null for everybody's.</summary>
    public string? Employer { get; init; }
}

/// <summary>
/// Lists what falls due. What an item is, when it is due and whether it may be used is asked of the register as <see cref="FindItems"/>
/// does; what may not be used stands apart.
/// </summary>
public static class ListDue
{
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static DueList In(DueRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        using var register = DocumentRegister.OpenToRead(request.Register, request.Today);
        var items = new ItemsOnRecord(register, request.Today) { WithoutObservations = true };
        var found = items.Every().Where(i => IsAsked(request, i.Employer)).ToList();
        var rows = items.Undecided().Where(u => u.IsRow && IsAsked(request, u.Record.Visit.Employer?.Name)).ToList();
        var (due, apart) = (
            InOrder(found.Where(i => MayBeUsed(i) && IsAsked(request, i.FallsDue)).Select(DueItem.Of)),
            InOrder(found.Where(i => !MayBeUsed(i)).Select(DueItem.Of).Concat(rows.Select(DueItem.Of)))
        );
        // What is overdue or held still has its day: only what every latest decision has moved is gone.
        var still = found
            .Where(i => IsAsked(request, i.FallsDue))
            .Select(i => (new DuePlace(i.Employer, i.Premises).Key, i.FallsDue!.Value))
            .ToHashSet();
        return new DueList
        {
            From = request.From,
            To = request.To,
            AsOf = request.Today,
            Due = due,
            Apart = apart,
            NoLonger =
            [
                .. found
                    .SelectMany(i => i.History)
                    .Where(v => IsAsked(request, v.FallsDue))
                    .Select(v => (At: new DuePlace(v.Employer, v.Premises), Day: v.FallsDue!.Value))
                    .DistinctBy(e => (e.At.Key, e.Day))
                    .Where(e => !still.Contains((e.At.Key, e.Day)))
                    .OrderBy(e => e.Day)
                    .ThenBy(e => e.At.Key, StringComparer.Ordinal),
            ],
            HasItems = found.Count + rows.Count > 0,
            Languages = Languages(register),
            Register = register.Identity,
            Version = register.Checkpoint()?.Size ?? 0,
        };
    }

    private static Dictionary<string, string> Languages(DocumentRegister register)
    {
        var (employers, languages) = (
            register.Visits.All().ToDictionary(v => v.Visit, v => FirmName.Fold(v.Employer)),
            new Dictionary<string, string>(StringComparer.Ordinal)
        );
        foreach (var document in register.Documents().Where(d => d is { Language: not null, Visit: not null }).OrderBy(d => d.IssuedOn))
        {
            if (employers.TryGetValue(document.Visit!.Value, out var employer))
                languages[employer] = document.Language!;
        }
        return languages;
    }

    private static bool MayBeUsed(FoundItem item) => item.Standing is Standing.InService or Standing.NotIssued;

    private static bool IsAsked(DueRequest request, string? employer) =>
        request.Employer is null || FirmName.Same(employer, request.Employer);

    private static bool IsAsked(DueRequest request, LocalDate? day) => request.From <= day && day <= request.To;

    private static IReadOnlyList<DueItem> InOrder(IEnumerable<DueItem> items) =>
        [
            .. items
                .OrderBy(i => i.At.Key, StringComparer.Ordinal)
                .ThenBy(i => i.Category, StringComparer.Ordinal)
                .ThenBy(i => i.FallsDue ?? LocalDate.MaxIsoValue)
                .ThenBy(i => i.Id, StringComparer.OrdinalIgnoreCase)
                .ThenBy(i => i.Serial, StringComparer.Ordinal),
        ];
}
