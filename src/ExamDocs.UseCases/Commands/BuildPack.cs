using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;
using ExamDocs.Documents.Browsing;
using ExamDocs.Documents.ReadingCopies;
using ExamDocs.Register;
using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Company.Packing;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Outputs;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;
using NodaTime;

namespace ExamDocs.UseCases.Commands;

/// <summary>What the user asks of an audit pack.</summary>
/// <param name="Place">The register.</param>
/// <param name="Asked">What it is to show.</param>
/// <param name="OutFile">The ZIP to write, as the user typed it.</param>
public sealed record PackRequest(string Place, PackQuestion Asked, string OutFile)
{
    /// <summary>A folder of PDFs and pictures to enclose; null for none.</summary>
    public string? EvidenceFolder { get; init; }

    /// <summary>What may be written over.</summary>
    public OutputGuard Outputs { get; init; } = OutputGuard.NewFilesOnly;

    /// <summary>How the pages are printed.</summary>
    public PrintStyle Style { get; init; } = new();

    /// <summary>A browser that is open already and stays open, for a program that runs on; null to start one for this run.</summary>
    public Browser? Browser { get; init; }

    /// <summary>Told how far it is; null for nobody.</summary>
    public Action<RunProgress>? Progress { get; init; }

    /// <summary>The PDF beside the ZIP.</summary>
    public string CopyFile =>
        Path.Combine(Path.GetDirectoryName(OutFile) ?? "", $"{Path.GetFileNameWithoutExtension(OutFile)}-reading-copy.pdf");
}

/// <summary>What was written, or why nothing was.</summary>
/// <param name="Remarks">What the user should know of what was written, a sentence each.</param>
/// <param name="Refused">Why nothing was written; null where something was.</param>
/// <param name="Failure">Why disk or browser stopped the run; null where nothing did.</param>
public sealed record PackResult(IReadOnlyList<Message> Remarks, Message? Refused, string? Failure)
{
    /// <summary>Null where none was built.</summary>
    internal PackContents? Contents { get; init; }

    public bool IsBuilt => Contents is not null;

    /// <summary>Whether the reading copy was written as well.</summary>
    public bool HasCopy { get; init; }

    /// <summary>Items and documents in it.</summary>
    public (int Items, int Documents) Counted => (Contents?.Items.Count ?? 0, Contents?.Documents.Count ?? 0);

    /// <summary>What is missing: a code, what it is about, and a sentence.</summary>
    public IReadOnlyList<(string Code, string About, string Words)> Gaps =>
        [.. (Contents?.Gaps ?? []).Select(g => (g.Code, g.About, g.Words))];
}

/// <summary>
/// Builds an audit pack: one ZIP with everything as it was issued and a list of what is missing, and beside it one PDF to read. It decides
/// nothing; neither file is numbered, and no register knows them.
/// </summary>
public static class BuildPack
{
    /// <summary>The employers for whom kit is on record, by name, each as typed last; not the firms that it is hired from.</summary>
    /// <exception cref="FileNotFoundException">There is no register at that place.</exception>
    public static IReadOnlyList<string> Employers(string place, LocalDate today)
    {
        using var register = DocumentRegister.OpenToRead(place, today);
        var items = new ItemsOnRecord(register, today);
        return
        [
            .. items
                .Undecided()
                .Select(u => (u.Record.Visit.Employer?.Name, Typed: (LocalDate.MinIsoValue, 0)))
                .Concat(items.All.Select(e => (e.Record.Visit.Employer?.Name, Typed: (e.Day, e.Visit.Visit))))
                .Where(e => FirmName.Fold(e.Name).Length > 0)
                .GroupBy(e => FirmName.Fold(e.Name), StringComparer.Ordinal)
                .Select(e => e.MaxBy(one => one.Typed).Name!)
                .Order(StringComparer.OrdinalIgnoreCase),
        ];
    }

    /// <exception cref="OutputRefusedException">A file may not be written there.</exception>
    /// <exception cref="IOException">A file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled; no file was written.</exception>
    /// <exception cref="Register.Model.RegisterAlteredException">What is stored differs from the log.</exception>
    public static async Task<PackResult> RunAsync(PackRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        var outputs = request.Outputs.For([request.EvidenceFolder], request.Place);
        outputs.Require(request.OutFile, request.CopyFile);
        var (files, leftOut, refused) = EvidenceFolder.Read(request.EvidenceFolder);
        if (refused is not null)
            return new([], refused, null);
        var steps = RunSteps.From(RunStage.Checking, request.Progress);
        using var register = DocumentRegister.OpenToRead(request.Place, request.Asked.Today);
        var check = CheckRegister.Run(register, [], request.Asked.Rules);
        cancellation.ThrowIfCancellationRequested();
        steps.Begin(RunStage.Gathering);
        var (pack, why) = new GatherPack(register, request.Asked, check).From(files);
        if (pack is null)
            return new(leftOut, why, null);
        leftOut = [.. leftOut, .. Elsewhere(pack.Elsewhere)];
        try
        {
            return await WriteAsync(request with { Outputs = outputs }, register, pack, leftOut, steps, cancellation);
        }
        catch (PrintException e)
        {
            return new(leftOut, null, RunFailure.Sentence(e));
        }
    }

    private static async Task<PackResult> WriteAsync(
        PackRequest request,
        DocumentRegister register,
        GatheredPack pack,
        IReadOnlyList<Message> leftOut,
        RunSteps steps,
        CancellationToken cancellation
    )
    {
        var copy = new PackReadingCopy(pack, request.Asked, register);
        var paged = copy.Paged(cancellation);
        var model = new PackModel(paged, ReadingCopy.LinkStart, request.Style.Letterhead, ProgramVersion.Current);
        await using var pages = new PackPages(model, request.Asked.Language, request.Browser);
        steps.Begin(RunStage.Printing, model.Front.Count + model.Back.Count);
        var own = await pages.PrintAsync(() => steps.Next(), cancellation);
        var bag = new PackBag(pack, request.Asked, register, await pages.IndexAsync());
        steps.Begin(RunStage.Writing, copy.Parts + (own?.Front.Count ?? 0) + (own?.Back.Count ?? 0) + pack.Enclosed.Count);
        void Next() => steps.Next();
        void WriteBag() => request.Outputs.WriteStream(request.OutFile, to => bag.Write(to, request.OutFile, Next, cancellation));
        if (own is not var (front, back))
        {
            WriteBag();
            return new(
                [.. leftOut, $"no reading copy was written: not all of its own pages can be printed with the fonts here"],
                null,
                null
            )
            {
                Contents = paged,
            };
        }
        // Neither file gets its name before both are whole.
        request.Outputs.WriteStream(request.CopyFile, to =>
        {
            copy.Write(to, paged, front, back, Next, cancellation);
            WriteBag();
        });
        return new([.. leftOut, .. NotInCopy(paged)], null, null) { Contents = paged, HasCopy = true };
    }

    /// <summary>Kit that changed hands, or whose employer was spelt another way.</summary>
    private static IEnumerable<Message> Elsewhere(IReadOnlyList<string> ids)
    {
        const int Most = 20;
        if (ids.Count > 0)
            yield return $"{ids.Count} items were recorded here once and last for another employer or elsewhere, and are not in the pack: "
                + $"{string.Join(", ", ids.Take(Most))}{Message.AsIs(ids.Count > Most ? ", …" : "")}";
    }

    private static IEnumerable<Message> NotInCopy(PackContents pack) =>
        pack
            .Documents.Where(d => d.Page is null)
            .Select(d => d.Number)
            .Concat(pack.Evidence.Where(e => e.Page is null).Select(e => e.Name))
            .Select(name => (Message)$"{name} is in the ZIP and not in the reading copy: its pages cannot be put together with others");
}
