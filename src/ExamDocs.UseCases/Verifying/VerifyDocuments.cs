using System.Security.Cryptography;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Registered;

namespace ExamDocs.UseCases.Verifying;

/// <summary>Are these documents ours, whole, unaltered and current, and do the rules confirm what they say?</summary>
public static class VerifyDocuments
{
    /// <returns>One for each file, in the order asked.</returns>
    /// <exception cref="IOException">A file cannot be opened, or the register cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be read.</exception>
    /// <exception cref="RegisterRefusedException">The file is not a register, or one of a later version.</exception>
    /// <exception cref="RegisterAlteredException">What the register has of the visit of a document differs from its log.</exception>
    public static async Task<IReadOnlyList<VerifiedFile>> RunAsync(VerifyRequest request, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        using var register = request.RegisterPath is { } path ? DocumentRegister.OpenToRead(path) : null;
        var standing = register is null ? null : new DocumentStanding(register, request.Now.InUtc().Date);
        return await RunAsync(
            request,
            register is null ? null : number => DocumentVisit.Require(register, register.Find(number)),
            cancellation,
            register?.Identity,
            standing is null ? null : standing.Against
        );
    }

    internal static async Task<IReadOnlyList<VerifiedFile>> RunAsync(
        VerifyRequest request,
        Func<string, DocumentStatus?>? register,
        CancellationToken cancellation,
        string? identity = null,
        Func<DocumentStatus, IEnumerable<(string Item, Message Why)>>? against = null
    )
    {
        await using var reprint = new Reprint(request.Browser);
        var verified = new List<VerifiedFile>();
        foreach (var file in request.Files)
        {
            cancellation.ThrowIfCancellationRequested();
            verified.Add(
                new FileInfo(file).Length > ReadDocument.MostBytes
                    ? new VerifiedFile(
                        file,
                        null,
                        "",
                        [Statement.Fails("data", $"it is not one of our documents: the file is larger than any of them")]
                    )
                    : await OfAsync(
                        file,
                        await File.ReadAllBytesAsync(file, cancellation),
                        request,
                        new AskedRegister(register, identity, against),
                        reprint,
                        cancellation
                    )
            );
        }
        return verified;
    }

    private static async Task<VerifiedFile> OfAsync(
        string file,
        byte[] pdf,
        VerifyRequest request,
        AskedRegister register,
        Reprint reprint,
        CancellationToken cancellation
    )
    {
        var (contents, said) = DocumentContents.Of(pdf);
        var data = contents is null ? Statement.Fails("data", said) : Statement.Holds("data", said);
        List<Statement> registered =
        [
            .. RegisterQuestions.Ask(contents?.Basis.Number, pdf, register, contents?.Basis.History.Asked?.Identity),
        ];
        var (signature, vouches) = SignatureQuestion.Ask(pdf, contents, request.Trust, request.Now);
        var isRegistered = registered.Exists(s => s is { Question: "bytes", Answer: Answer.Holds });
        return new VerifiedFile(
            file,
            contents?.Basis.Number,
            Convert.ToHexStringLower(SHA256.HashData(pdf)),
            [
                data,
                .. Named(file, contents?.Basis),
                .. registered,
                .. signature,
                .. contents is null ? [] : await ContentsAsync(pdf, contents, request.Rules, reprint, cancellation),
                isRegistered || vouches
                    ? Statement.Holds(
                        "genuine",
                        isRegistered
                            ? (Message)$"the register vouches for every byte"
                            : $"a signature by a certificate that you named covers every byte"
                    )
                    : Statement.NotChecked(
                        "genuine",
                        $"nothing vouches for where it comes from: no register that holds these bytes, and no signature by a "
                            + $"certificate that you named"
                    ),
            ]
        );
    }

    /// <summary>A file may have any name but one with only the number of another document: a reader would take it for that one.</summary>
    private static IEnumerable<Statement> Named(string file, DocumentBasis? basis)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        return
            basis is not null
            && DocumentNumber.In(name) is { Count: > 0 } numbers
            && !numbers.Contains(basis.Number, StringComparer.Ordinal)
            ? [Statement.Fails("name", $"the file is named {name}, and is {basis.Number}")]
            : [];
    }

    private static async Task<IReadOnlyList<Statement>> ContentsAsync(
        byte[] pdf,
        DocumentContents contents,
        KnownRules rules,
        Reprint reprint,
        CancellationToken cancellation
    )
    {
        var foreign = PrintQuestion.Foreign(pdf);
        if (contents.Determined(rules) is not { } visit)
            return [Statement.Fails("outcome", $"the record within cannot be decided in any bearable time"), .. Given(foreign)];
        if (OutcomeQuestion.WithoutOwnRules(contents, visit) is { } unknown)
            return [unknown, .. Given(foreign)];
        var jobs = RecomposedDocument.Jobs(contents, visit);
        if (jobs.Count == 0)
            return [OutcomeQuestion.NotCalledFor(contents), .. Given(foreign)];
        var outcomes = jobs.Select(j => OutcomeQuestion.Ask(contents, j.Items)).ToList();
        return
        [
            outcomes.Find(o => o.Answer is Answer.Holds) ?? outcomes[0],
            foreign ?? await PrintQuestion.AskAsync(pdf, contents, jobs, reprint, cancellation),
        ];
    }

    private static IEnumerable<Statement> Given(Statement? statement) => statement is null ? [] : [statement];
}
