using System.Text.RegularExpressions;
using ExamDocs.Core;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Register;
using NodaTime;

namespace ExamDocs.UseCases.Verifying;

/// <summary>What the user asks to be verified, and against what.</summary>
public sealed record VerifyRequest
{
    public required IReadOnlyList<string> Files { get; init; }

    /// <summary>The register to ask, which is there; null for none.</summary>
    public string? RegisterPath { get; init; }

    /// <summary>What signatures have to go back to.</summary>
    public SignatureTrust Trust { get; init; } = SignatureTrust.OfTheSystem;

    /// <summary>The time at which it is asked.</summary>
    public required Instant Now { get; init; }

    /// <summary>The categories and regimes that records can name.</summary>
    public KnownRules Rules { get; init; } = KnownRules.BuiltIn;
}

/// <summary>Are these documents ours, whole, unaltered and current, and do the rules bear out what they say?</summary>
public static partial class VerifyDocuments
{
    /// <returns>One for each file, in the order asked.</returns>
    /// <exception cref="IOException">A file cannot be opened, or the register cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be read.</exception>
    /// <exception cref="RegisterRefusedException">The register is none, or of a later version.</exception>
    public static async Task<IReadOnlyList<VerifiedFile>> RunAsync(VerifyRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        using var register = request.RegisterPath is { } path ? DocumentRegister.OpenToRead(path) : null;
        return await RunAsync(request, register is null ? null : register.Find, cancellation, register?.Identity);
    }

    internal static async Task<IReadOnlyList<VerifiedFile>> RunAsync(
        VerifyRequest request, Func<string, DocumentStatus?>? register, CancellationToken cancellation, string? identity = null)
    {
        await using var renderer = new DocumentRenderer();
        var verified = new List<VerifiedFile>();
        foreach (var file in request.Files)
        {
            cancellation.ThrowIfCancellationRequested();
            verified.Add(new FileInfo(file).Length > ReadDocument.MostBytes
                ? new VerifiedFile(file, null, [Statement.Fails("data", "none of our documents: the file is larger than any of them")])
                : await OfAsync(file, await File.ReadAllBytesAsync(file, cancellation), request, register, identity, renderer));
        }
        return verified;
    }

    private static async Task<VerifiedFile> OfAsync(
        string file, byte[] pdf, VerifyRequest request, Func<string, DocumentStatus?>? register, string? identity, DocumentRenderer renderer)
    {
        var (contents, data) = DocumentContents.Of(pdf);
        List<Statement> registered = [.. RegisterQuestions.Ask(contents?.Basis.Number, pdf, register, contents?.Basis.History.Asked?.Identity, identity)];
        var (signature, vouches) = SignatureQuestion.Ask(pdf, request.Trust, request.Now);
        var isRegistered = registered.Exists(s => s is { Question: "bytes", Answer: Answer.Holds });
        return new VerifiedFile(file, contents?.Basis.Number,
        [
            data, .. Named(file, contents?.Basis), .. registered, .. signature,
            .. contents is null ? [] : await ContentsAsync(pdf, contents, request.Rules, renderer),
            .. isRegistered || vouches ? (Statement[])[] : [Statement.Fails("genuine", "nothing vouches for it: no register that knows it as it is, and no signature of anybody trusted")],
        ]);
    }

    /// <summary>A document may have any name but another's number: whoever looks for that one would take it for it.</summary>
    private static IEnumerable<Statement> Named(string file, DocumentBasis? basis)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        return basis is not null && Number().IsMatch(name) && !string.Equals(name, basis.Number, StringComparison.Ordinal)
            ? [Statement.Fails("name", $"the file is named {name}, and is {basis.Number}")] : [];
    }

    [GeneratedRegex(@"\A[A-Z]-[0-9]{4}-[0-9]{6,9}\z", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    private static async Task<IReadOnlyList<Statement>> ContentsAsync(byte[] pdf, DocumentContents contents, KnownRules rules, DocumentRenderer renderer)
    {
        if (contents.Determined(rules) is not { } visit)
            return [Statement.Fails("outcome", "the record within cannot be decided in any bearable time")];
        var jobs = RecomposedDocument.Jobs(contents, visit);
        if (jobs.Count == 0)
            return [Statement.Fails("outcome", $"the record within, determined once more, calls for no {contents.Basis.Kind} of {string.Join(", ", contents.Basis.Items.Take(5))}")];
        var outcomes = jobs.Select(j => OutcomeQuestion.Ask(contents, j.Items)).ToList();
        return [outcomes.Find(o => o.Answer is Answer.Holds) ?? outcomes[0], await PrintQuestion.AskAsync(pdf, contents, jobs, renderer)];
    }
}
