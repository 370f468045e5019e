using ExamDocs.Core.Findings;
using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Browsing;
using ExamDocs.Intake.Json;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Recalling;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What a sweep did.</summary>
/// <param name="Items">Every item of the register, the affected first.</param>
/// <param name="Issued">What was issued; null where nothing had to be.</param>
/// <param name="File">Name of the record of the sweep in the folder; null where the folder had it already, or the run was stopped.</param>
public sealed record SweepResult(IReadOnlyList<PlannedItem> Items, IssueResult? Issued, string? File)
{
    internal IReadOnlyDictionary<PlannedItem, string> References { get; init; } = new Dictionary<PlannedItem, string>();

    /// <summary>Numbers of the papers about an item that keep it out of use because of this notice.</summary>
    public IReadOnlyList<string> PapersOf(PlannedItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return References.TryGetValue(item, out var reference)
            ?
            [
                .. Issued!
                    .Documents.Where(d =>
                        string.Equals(d.Job?.Visit.Record.Visit.Reference, reference, StringComparison.Ordinal)
                        && d.Items.Contains(item.Item.Item.Id ?? "", StringComparer.Ordinal)
                    )
                    .Select(d => d.Number),
            ]
            : item.Documents;
    }
}

/// <summary>
/// Takes everything that a safety notice names out of use: each item is recorded as withdrawn, or held where it cannot be told, with a
/// notice to its owner and a label. Run again, it goes on where it was, and takes out only what is new.
/// </summary>
public static class SweepRecall
{
    private static readonly IReadOnlyList<string> Papers = [DocumentTypes.QuarantineLabel.Kind, DocumentTypes.Notice.Kind];

    /// <summary>What a sweep would do about each item of a register; nothing is written.</summary>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static IReadOnlyList<PlannedItem> Plan(string place, SafetyNotice notice, LocalDate today) => Look(place, notice, today).Items;

    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    /// <exception cref="OutputRefusedException">Something in the folder is in the way; nothing was issued.</exception>
    /// <exception cref="IOException">The register or the folder cannot be written.</exception>
    public static async Task<SweepResult> RunAsync(SweepRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        IssuedInto.Require(request.OutFolder, request.RegisterPath, request.Today);
        var (items, earlier, register) = Look(request.RegisterPath, request.Notice, request.Today);
        var visits = Visits(request, items);
        var read = earlier.Unfinished.Concat(visits.Select(Read)).ToList();
        var result = new SweepResult(items, read.Count == 0 ? null : await IssueAsync(request, read, cancellation), null)
        {
            References = visits
                .SelectMany(v => v.Items.Select(i => (Item: i, v.Record.Visit.Reference)))
                .ToDictionary(v => v.Item, v => v.Reference!),
        };
        if (result.Issued?.Failure is not null || (read.Count == 0 && SweepFile.IsIn(request.OutFolder, request.Notice, register)))
            return result;
        var content = SweepFile.Write(request.Notice, items.Select(i => (i, result.PapersOf(i))), register, request.Today);
        return result with { File = SweepFile.Put(request.OutFolder, request.Notice, content, request.Today) };
    }

    private static (IReadOnlyList<PlannedItem> Items, EarlierSweeps Earlier, string Register) Look(
        string place,
        SafetyNotice notice,
        LocalDate today
    )
    {
        var recalled = RecallItems.In(place, notice, today);
        using var register = DocumentRegister.OpenToRead(place, today);
        var earlier = EarlierSweeps.In(register, notice);
        return (SweepPlan.Of(notice, recalled, earlier), earlier, register.Identity);
    }

    /// <summary>
    /// The records of the new items. A whole goes out with its affected part and comes back with another one. Where the rules do not see
    /// that, it goes out by itself.
    /// </summary>
    private static IReadOnlyList<SweepVisit> Visits(SweepRequest request, IReadOnlyList<PlannedItem> items)
    {
        var news = items.Where(i => i.IsNew).ToList();
        if (news.Count == 0)
            return [];
        var records = new SweepRecord(
            request.Notice,
            Known(request),
            request.Today,
            ReadPrintStyle.Screen(request.Style.Language.Tag) ?? MessageLanguage.English
        );
        var byItself = new HashSet<PlannedItem>();
        var visits = records.Of(news, byItself.Contains);
        using var register = DocumentRegister.OpenToRead(request.RegisterPath, request.Today);
        while (NotOut(visits, register, request) is { Count: > 0 } left)
        {
            if (left.Any(i => !byItself.Add(i)))
                throw new InvalidOperationException($"{left[0].Item.Item.Id} is named by the notice and would stay in use.");
            visits = records.Of(news, byItself.Contains);
        }
        return visits;
    }

    /// <summary>The items that these records would leave in use.</summary>
    private static List<PlannedItem> NotOut(IReadOnlyList<SweepVisit> visits, DocumentRegister register, SweepRequest request)
    {
        var decided = DecideRun.Check([.. visits.Select(Read)], register, request.Today, request.Rules);
        return
        [
            .. visits.Zip(decided, (v, d) => v.Items.Zip(d.Visit!.Items)).SelectMany(i => i).Where(i => !IsOut(i)).Select(i => i.First),
        ];
    }

    private static bool IsOut((PlannedItem Planned, Core.Determination.DeterminedItem Decided) item) =>
        item.Decided.Outcome switch
        {
            Outcome.Withdraw => true,
            // What was only not examined would not end the label and the report that say that it may be used.
            Outcome.Undetermined => item.Planned.Action is SweepAction.Hold && item.Decided.Reasons.Any(r => r.Code is not "U0"),
            _ => false,
        };

    private static ReadVisits Read(SweepVisit visit) =>
        new(visit.Record.Visit.Reference!, JsonRecordReader.Read(JsonRecordWriter.Write(visit.Record), visit.Record.Visit.Reference!));

    private static Person Known(SweepRequest request)
    {
        var typed = request.Examiner;
        var known = RegisteredModels
            .In(request.RegisterPath, request.Today)
            .AddedTo(new ExaminationRecord())
            .People.LastOrDefault(p => string.Equals(p.Name, typed.Name, StringComparison.OrdinalIgnoreCase));
        return typed with
        {
            Id = "ex1",
            Address = typed.Address ?? known?.Address,
            Qualifications = typed.Qualifications ?? known?.Qualifications,
            SelfEmployed = typed.SelfEmployed ?? known?.SelfEmployed,
            Employer = typed.Employer ?? known?.Employer,
        };
    }

    private static Task<IssueResult> IssueAsync(SweepRequest request, IReadOnlyList<ReadVisits> read, CancellationToken cancellation) =>
        IssueDocuments.RunAsync(
            new IssueRequest
            {
                Inputs = [],
                Read = read,
                OutFolder = request.OutFolder,
                RegisterPath = request.RegisterPath,
                Today = request.Today,
                Rules = request.Rules,
                Style = request.Style,
                Browser = request.Browser,
                // That nobody may have a report of what was not examined is no news here.
                Progress = request.Progress is { } told ? progress => told(progress with { Refused = 0 }) : null,
                Only = Papers,
            },
            cancellation
        );
}
