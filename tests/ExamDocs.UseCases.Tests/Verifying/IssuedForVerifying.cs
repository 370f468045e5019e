using System.Security.Cryptography;
using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.Documents.Comparing;
using ExamDocs.Documents.Finishing;
using ExamDocs.Documents.Rendering;
using ExamDocs.Documents.Signing;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using NodaTime;

[assembly: AssemblyFixture(typeof(ExamDocs.UseCases.Tests.Verifying.IssuedForVerifying))]

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>A small visit issued once for all tests, and the means to make a document that differs from it in one thing.</summary>
public sealed class IssuedForVerifying : IDisposable
{
    private readonly Workspace _workspace = new();
    private readonly Lazy<IssueResult> _issued;
    private readonly Lazy<Task<byte[]>> _labelOfAnotherVersion;
    private readonly Lazy<byte[]> _drawnLabel;

    public IssuedForVerifying()
    {
        _issued = new(() => ExampleIssued.Issued(_workspace.Request(_workspace.Write(Workspace.Example().Only("CON-01", "CON-07")))));
        _labelOfAnotherVersion = new(() => OfAnotherVersionAsync(Label));
        _drawnLabel = new(() => ForgeryTests.Drawn(File.ReadAllBytes(Label)));
    }

    internal string Folder => _workspace.Folder;

    internal string Register => _workspace.Register;

    internal string Report => First("report");

    internal string Label => First("quarantine-label");

    /// <summary>The label as Poppler draws it.</summary>
    internal byte[] DrawnLabel => _drawnLabel.Value;

    /// <summary>The label, saying that another version of the program made it.</summary>
    internal Task<byte[]> LabelOfAnotherVersionAsync() => _labelOfAnotherVersion.Value;

    internal static Instant Now { get; } = Instant.FromUtc(2026, 5, 13, 9, 0);

    /// <summary>Finished and attached anew from the same pages, or from altered ones.</summary>
    internal async Task<byte[]> ForgedAsync(
        string file,
        Func<string, string>? html = null,
        string? attachment = null,
        Func<string, string>? data = null
    )
    {
        var pdf = await File.ReadAllBytesAsync(file);
        var contents = DocumentContents.Of(pdf).Contents!;
        await using var renderer = new DocumentRenderer();
        var page = await RecomposedDocument.HtmlAsync(
            RecomposedDocument.Jobs(contents, contents.Determined(KnownRules.BuiltIn)!)[0],
            contents.Basis,
            renderer,
            DrawnPictures.Of(pdf)
        );
        var altered = html?.Invoke(page) ?? page;
        Assert.Equal(html is null, altered == page);
        return Finisher.Finish(
            await PrintAsync(altered),
            [
                .. EmbeddedFiles
                    .Within(pdf)
                    .Select(d => d with { Content = d.Name == attachment && data is not null ? Changed(d.Content, data) : d.Content }),
            ]
        );
    }

    internal Task<byte[]> OfAnotherVersionAsync(string file) =>
        ForgedAsync(file, null, "document.json", json =>
            json.Replace($"\"version\": \"{ProgramVersion.Current}\"", "\"version\": \"0.0.1\"", StringComparison.Ordinal)
        );

    internal static Task<byte[]> PrintAsync(string html) => OpenBrowser.Instance.PrintAsync(html);

    /// <summary>
    /// What verifying says of the bytes against a register that takes them for those issued, so that nothing but their content speaks.
    /// </summary>
    internal async Task<VerifiedFile> VerifiedAsync(
        byte[] pdf,
        Func<DocumentStatus, DocumentStatus>? known = null,
        string name = "given.pdf",
        SignatureTrust? trust = null
    )
    {
        var path = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, Guid.NewGuid().ToString("N"))).FullName, name);
        await File.WriteAllBytesAsync(path, pdf);
        DocumentStatus Known(string number) =>
            new()
            {
                Number = number,
                Kind = "report",
                JobKey = "k",
                Folder = Folder,
                State = DocumentState.Issued,
                Sha256 = Convert.ToHexStringLower(SHA256.HashData(pdf)),
            };
        var request = new VerifyRequest
        {
            Browser = OpenBrowser.Instance,
            Files = [path],
            Now = Now,
            Trust = trust ?? SignatureTrust.InNobody,
        };
        return Assert.Single(
            await VerifyDocuments.RunAsync(
                request,
                number => known is null ? Known(number) : known(Known(number)),
                TestContext.Current.CancellationToken
            )
        );
    }

    /// <summary>What is wrong, question and sentence.</summary>
    internal static IEnumerable<string> Faults(VerifiedFile verified) =>
        verified.Statements.Where(s => s.Answer is Answer.Fails).Select(s => $"{s.Question}: {s.Text}");

    public void Dispose() => _workspace.Dispose();

    private string First(string kind) => _workspace.FileOf(_issued.Value.Documents.First(d => d.Document.Kind == kind));

    private static byte[] Changed(byte[] data, Func<string, string> change)
    {
        var (before, after) = (Encoding.UTF8.GetString(data), change(Encoding.UTF8.GetString(data)));
        Assert.NotEqual(before, after);
        return Encoding.UTF8.GetBytes(after);
    }
}
