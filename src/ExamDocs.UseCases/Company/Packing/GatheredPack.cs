using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Checking;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Templates;
using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Company.Packing;

/// <summary>All that goes into a pack, found in a register and in a folder.</summary>
/// <param name="Contents">What it says; the pages of a reading copy are not known yet.</param>
/// <param name="Enclosed">The documents enclosed, in the order of the contents.</param>
/// <param name="Evidence">The files enclosed, in the order of the contents.</param>
/// <param name="Checkpoint">The state of the log; null while it is empty.</param>
/// <param name="Proofs">Show that the documents are in the log.</param>
internal sealed record GatheredPack(
    PackContents Contents,
    IReadOnlyList<IssuedDocument> Enclosed,
    IReadOnlyList<EvidenceFile> Evidence,
    Checkpoint? Checkpoint,
    IReadOnlyList<InclusionProof> Proofs
)
{
    /// <summary>Ids of kit that was this employer's or lay there once, and is not in the pack.</summary>
    public IReadOnlyList<string> Elsewhere { get; init; } = [];
}

/// <summary>Gathers a pack.</summary>
/// <param name="register">Opened.</param>
/// <param name="asked">What it is asked to show.</param>
/// <param name="check">What a check of the register found.</param>
internal sealed class GatherPack(DocumentRegister register, PackQuestion asked, RegisterCheckResult check)
{
    private readonly RegisterThen _then = new(register, asked.AsOf);

    /// <exception cref="RegisterAlteredException">What is stored differs from the log.</exception>
    public (GatheredPack? Pack, Core.Findings.Message? Refused) From(IReadOnlyList<EvidenceFile> evidence)
    {
        var items = new ItemsOnRecord(register, asked.AsOf, then: _then);
        var things = new PackedThings(items, _then, asked);
        if (things.NotFound.Count > 0)
            return (null, $"no item '{string.Join(", ", things.NotFound)}' of '{asked.Employer}' is on record by {asked.AsOf}");
        if (things.Decided.Count == 0 && things.Undecided.Count == 0)
            return (null, $"no kit of '{asked.Employer}' is on record by {asked.AsOf}");
        var enclosed = Enclosed(things);
        var numbers = enclosed.Select(d => d.Number).ToHashSet(StringComparer.Ordinal);
        var examiners = PackedExaminer.Of(things.Decided);
        var match = new EvidenceMatch(examiners, things.Decided, items.All.SelectMany(NamesIn));
        var matched = evidence.Select(f => (File: f, About: match.Of(Path.GetFileName(f.Path)))).ToList();
        var files = matched.ConvertAll(m => new PackEvidence(m.File.Name, m.About.Kind, m.About.About, m.File.Sha256, m.File.Pages));
        var people = examiners.Select(e => Examiner(e, files)).ToList();
        var contents = new PackContents
        {
            Scope = new(asked.Employer, asked.Premises, asked.Items, asked.AsOf, asked.Today, register.Identity, register.KeptSince),
            Gaps = Gaps(things, items, [.. matched.SelectMany(m => m.About.Things)], people),
            Items = [.. things.Decided.Select(t => Item(t, numbers)), .. things.Undecided.Select(Item)],
            Documents = [.. enclosed.Select(Document)],
            Evidence = files,
            Examiners = people,
            Retention = Retention(things),
        };
        var (checkpoint, proofs) = register.Proofs(numbers);
        var bytes = enclosed.Select(d => register.FindByNumber(d.Number)!).ToList();
        return (new(contents, bytes, evidence, checkpoint, proofs) { Elsewhere = things.Elsewhere }, null);
    }

    /// <summary>By kind, in the order in which kinds are listed, and by number. What the register no longer holds is left out.</summary>
    private List<DocumentStatus> Enclosed(PackedThings things)
    {
        var kinds = DocumentTypes.All.Select(t => t.Kind).ToList();
        return
        [
            .. things
                .Documents.Where(IsHeld)
                .OrderBy(d => kinds.IndexOf(d.Kind) is >= 0 and var at ? at : kinds.Count)
                .ThenBy(d => d.Number, StringComparer.Ordinal),
        ];
    }

    private bool IsHeld(DocumentStatus document)
    {
        if (!check.OfDocuments.Any(d => string.Equals(d.Number, document.Number, StringComparison.Ordinal)))
            return true;
        try
        {
            register.Content(register.FindByNumber(document.Number)!);
            return true;
        }
        catch (InvalidDataException)
        {
            return false;
        }
    }

    private IReadOnlyList<PackGap> Gaps(
        PackedThings things,
        ItemsOnRecord items,
        HashSet<PackedThing> declared,
        IReadOnlyList<PackExaminer> people
    )
    {
        var records = items.All.Select(e => e.Record).Distinct().Where(r => asked.IsOf(r.Visit.Employer?.Name)).ToList();
        var find = new FindGaps(things, asked, records);
        return
        [
            .. RegisterGaps
                .Of(check, things, asked)
                .Concat(find.WithoutDocument())
                .Concat(find.WithoutQuarantine())
                .Concat(find.WithoutRemedy())
                .Concat(find.Replaced(Lying(things)))
                .Concat(find.WithoutDeclaration(declared))
                .Concat(find.WithoutCompetence(people))
                .OrderBy(g => g.Kind),
        ];
    }

    /// <summary>What lies in the folders that documents of these visits were issued into, and was not set apart there.</summary>
    private IEnumerable<(DocumentStatus Document, string File)> Lying(PackedThings things) =>
        from folder in register
            .Documents()
            .Where(d => d.Folder.Length > 0 && d.Visit is { } visit && things.Visits.Contains(visit))
            .Select(d => d.Folder)
            .Distinct(StringComparer.Ordinal)
        where Directory.Exists(folder)
        from held in new DocumentFolder(register, folder).Documents()
        where !held.File.Contains('/', StringComparison.Ordinal) && held.Document.Visit is { } visit && things.Visits.Contains(visit)
        let then = _then.Find(held.Document.Number)
        where then is not null
        select (then, held.File);

    private IReadOnlyList<PackRetention> Retention(PackedThings things) =>
        [
            .. PersonalData
                .In(register, asked.Rules)
                .Where(v => things.Visits.Contains(v.Number))
                .OrderByDescending(v => v.ReportedOn)
                .ThenByDescending(v => v.Number)
                .Select(v => new PackRetention(v.Reference, v.ReportedOn, v.Rules, v.Until)),
        ];

    private PackItem Item(PackedThing thing, IReadOnlySet<string> enclosed) =>
        new()
        {
            Item = thing.Shown.Item with { Id = thing.Shown.Id },
            Premises = thing.Shown.Premises,
            Standing = asked.Say(thing.Shown.Standing.Said()),
            Why = thing.Why(asked),
            IsInService = thing.Shown.Standing is Standing.InService,
            UsableThrough = thing.Shown.UsableThrough,
            // A date beside kit that may never be used again would read as if it were to be examined.
            NextBy = thing.Shown.Standing is Standing.Withdrawn ? null : thing.Shown.NextBy,
            Documents = [.. thing.Documents.Where(d => enclosed.Contains(d.Number)).Select(d => d.Number)],
        };

    private PackItem Item(UndecidedThing thing) =>
        new()
        {
            Item = thing.Item,
            Premises = thing.Premises,
            Standing = asked.Say(Standing.NotIssued.Said()),
            Why = asked.Say($"no visit has decided about it"),
            IsInService = false,
        };

    private static PackDocument Document(DocumentStatus document) =>
        new()
        {
            Number = document.Number,
            Kind = document.Kind,
            IsCopy = document.CopyOf is not null,
            Items = document.Items,
            IssuedOn = document.IssuedOn,
            Pages = document.Pages!.Value,
            Sha256 = document.Sha256!,
        };

    /// <summary>What a file could be about besides: a longer id of something that is not in the pack.</summary>
    private static IEnumerable<string?> NamesIn(ItemEntry entry) =>
        entry.Record.People.SelectMany(p => new[] { p.Id, p.Name }).Append(entry.Item.Id).Append(entry.Item.Model);

    private static PackExaminer Examiner(PackedExaminer examiner, IReadOnlyList<PackEvidence> files) =>
        new(
            examiner.Name,
            examiner.Qualifications,
            [
                .. files
                    .Where(f => f.Kind is PackEvidenceKind.Competence && f.About.Contains(examiner.Name, StringComparer.Ordinal))
                    .Select(f => f.Name),
            ]
        );
}
