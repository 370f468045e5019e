using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Signing;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.Templates.Label;
using ExamDocs.Templates.Wording;
using NodaTime;

namespace ExamDocs.UseCases;

/// <summary>What the user asks to be issued.</summary>
public sealed record IssueRequest
{
    public required IReadOnlyList<string> Inputs { get; init; }

    /// <summary>Folder the files go to; made where it is missing.</summary>
    public required string OutFolder { get; init; }

    public required string RegisterPath { get; init; }

    /// <summary>Day of issue.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;

    /// <summary>The language of the documents.</summary>
    public Language Language { get; init; } = Language.English;

    /// <summary>The issuer's; null for none.</summary>
    public Letterhead? Letterhead { get; init; }

    /// <summary>Who signs the documents electronically; null for nobody.</summary>
    public DocumentSigner? Signer { get; init; }

    /// <summary>One report for each item instead of a schedule of all.</summary>
    public bool PerItem { get; init; }

    /// <summary>From how far labels for what may not be used are to be read.</summary>
    public ReadingDistance Reading { get; init; } = ReadingDistance.Default;

    /// <summary>Why an earlier version of the record is corrected, in words for the documents; null to say only that it was.</summary>
    public string? Reason { get; init; }

    /// <summary>Only documents of this kind; null for all that a visit calls for by itself.</summary>
    public string? Only { get; init; }

    internal bool Wants(DocumentJob job) => Only is null ? !job.Type.IsOnRequest : string.Equals(job.Type.Kind, Only, StringComparison.Ordinal);

    /// <summary>In the language, under the head and with the signature that are asked for.</summary>
    internal DocumentJob Dressed(DocumentJob job) => job with { Language = Language, Letterhead = Letterhead, Signer = Signer };
}

/// <summary>A document that is out.</summary>
/// <param name="Document">As the register has it.</param>
/// <param name="IssuedNow">False where it was issued by an earlier run on the same record.</param>
public sealed record Issued(IssuedDocument Document, bool IssuedNow)
{
    /// <summary>Number of the report that it is a copy of for the enforcing authority; null for what is no copy.</summary>
    public string? CopyOf { get; init; }
}

/// <summary>What came of it.</summary>
/// <param name="Inputs">The inputs as checked.</param>
/// <param name="Documents">In the order issued; empty where an input is unreadable.</param>
/// <param name="Refused">Items for which a report or a certificate was refused.</param>
/// <param name="Remarks">Sentences about what an interrupted run had left, and about labels that are hard to read.</param>
/// <param name="Unprintable">Sentences about documents that could not be printed as recorded.</param>
/// <param name="Failure">Why the machinery stopped; null where it did not. What is listed is whole.</param>
public sealed record IssueResult(
    IReadOnlyList<CheckedInput> Inputs, IReadOnlyList<Issued> Documents, IReadOnlyList<Refusal> Refused,
    IReadOnlyList<string> Remarks, IReadOnlyList<string> Unprintable, string? Failure);

/// <summary>The main job: read, check, determine, compose, print, record.</summary>
public static class IssueDocuments
{
    /// <exception cref="RegisterRefusedException">The register is none, or of a later version.</exception>
    /// <exception cref="IOException">The register or the folder cannot be written.</exception>
    public static async Task<IssueResult> RunAsync(IssueRequest request, CancellationToken cancellation = default)
    {
        var read = ReadVisits.From(request.Inputs, request.Rules, new VisitPhotos());
        if (read.Any(v => v.Unreadable is not null))
            return new IssueResult(DecideRun.Check(read, null, request.Today, request.Rules), [], [], [], [], null);

        if (!DocumentRegister.Exists(request.RegisterPath) && NothingToIssue(read, request) is { } nothing)
            return nothing;
        using var register = DocumentRegister.Open(request.RegisterPath, request.Today);
        var remarks = register.Recover();
        var run = DecideRun.Remember(read, register, request.Today, request.Rules);
        remarks = [.. remarks, .. EndedDocuments.Of(run, register)];
        var (inputs, refused, corrections) = (run.Inputs.ToArray(), new List<Refusal>(), new Corrections(register, request.Reason));
        await using var press = new Press(register, request.OutFolder, request.Today) { Corrections = corrections };
        string? failure = null;
        foreach (var n in run.InOrder().TakeWhile(_ => failure is null))
        {
            inputs[n] = run.Naming(register, n);
            corrections.Take(inputs[n].Visit!, run.Numbers[n].Visit);
            var composition = ComposeDocuments.Of(inputs[n].Visit!, request.PerItem, request.Reading, inputs[n].Photos.Of);
            var ended = EndedLines.Of(register, run.Numbers[n].Visit, inputs[n].Visit!);
            refused.AddRange([.. composition.Refused, .. ended.Refused]);
            failure = await press.RunAsync([.. composition.Jobs.Where(request.Wants).Select(request.Dressed).Select(ended.Without).OfType<DocumentJob>()], cancellation);
        }
        refused.AddRange(press.Refused);
        DocumentsFile.Write(request.OutFolder, press.Documents, refused);
        if (failure is null && request.Only is null)
            remarks = [.. remarks, .. corrections.TakeBack(press.Documents.Select(d => d.Document.Number).ToHashSet(StringComparer.Ordinal))];
        CheckpointBeside.Write(register, request.OutFolder, request.Today, request.Signer);
        return new IssueResult(inputs, press.Documents, refused, [.. remarks, .. press.Remarks], press.Unprintable, failure);
    }

    /// <summary>A run that issues nothing makes no register.</summary>
    /// <returns>Null where something is to be issued.</returns>
    private static IssueResult? NothingToIssue(IReadOnlyList<ReadVisits> read, IssueRequest request)
    {
        var inputs = DecideRun.Check(read, null, request.Today, request.Rules);
        var compositions = inputs.Select(i => ComposeDocuments.Of(i.Visit!, request.PerItem, request.Reading, i.Photos.Of)).ToList();
        return compositions.Exists(c => c.Jobs.Any(request.Wants)) ? null : new IssueResult(inputs, [], [.. compositions.SelectMany(c => c.Refused)], [], [], null);
    }
}
