using ExamDocs.Documents.Signing;
using ExamDocs.Documents.Tests.Signing;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Verifying.IssuedForVerifying;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>What was issued is valid where the register holds it, and never "not valid" where it stands alone.</summary>
public sealed class GenuineTests(IssuedForVerifying issued)
{
    private static readonly string[] Asked = ["report", "notice", "quarantine-label", "due-label", "certificate", "record", "check-sheet"];

    [Theory]
    [InlineData("de", false)]
    [InlineData("fr", true)]
    public async Task Every_kind_of_document_in_every_language_signed_or_not(string language, bool isSigned)
    {
        using var workspace = new Workspace();
        var record = workspace.Write(Workspace.Example().Only("HAR-02", "BRG-02", "BRG-03", "CON-07"));
        var certificate = TestAuthority.One.Certificate("Maren Oakhollow");
        var request = workspace.Request(record) with
        {
            Style = new PrintStyle
            {
                Language = Language.Find(language)!,
                Signer = isSigned ? new DocumentSigner(TestAuthority.One.Key(certificate)) : null,
            },
        };
        List<string> all = [];
        foreach (var only in (string?[])[null, "record", "check-sheet"])
            all.AddRange(
                (await IssueDocuments.RunAsync(request with { Only = only is null ? [] : [only] }, TestContext.Current.CancellationToken))
                    .Documents.Take(only is null ? 99 : 1)
                    .Select(workspace.FileOf)
            );
        var trust = SignatureTrust.FromPem(certificate.ExportCertificatePem())!;

        // One of each kind, for each is printed once more.
        var files = Effort.IsFull ? all : [.. all.DistinctBy(f => Path.GetFileName(f)[0])];
        var registered = await VerifyAsync(files, workspace.Register, SignatureTrust.InNobody);
        Assert.Equal("", Against(registered));
        Assert.All(registered, v => Assert.Equal(Verdict.Valid, v.Verdict));
        var alone = await VerifyAsync([.. files.DistinctBy(f => Path.GetFileName(f)[0])], null, trust);
        Assert.Equal("", Against(alone));
        Assert.All(alone, v => Assert.Equal(Verdict.CannotTell, v.Verdict));
        Assert.All(alone, v => Assert.Equal(isSigned, v.Statements.Any(s => s is { Question: "genuine", Answer: Answer.Holds })));
        Assert.All(alone, v => Assert.Contains(v.Statements, s => s is { Question: "print", Answer: Answer.Holds }));
        Assert.Superset(Asked.ToHashSet(), alone.Select(v => Kind(v.Number!)).ToHashSet());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Photos_and_a_letterhead_with_its_logo_do_no_harm(bool isSigned)
    {
        using var workspace = new Workspace();
        var example = Path.Combine(RepositoryRoot.Path, "examples");
        var request = workspace.Request(Path.Combine(example, "photos.json")) with
        {
            Style = new PrintStyle
            {
                Letterhead = ReadLetterhead.From(Path.Combine(example, "letterhead.json")).Letterhead,
                Signer = isSigned ? new DocumentSigner(TestAuthority.One.Key()) : null,
            },
        };
        var result = await IssueDocuments.RunAsync(request, TestContext.Current.CancellationToken);
        var verified = await VerifyAsync([.. result.Documents.Select(workspace.FileOf)], workspace.Register, SignatureTrust.InNobody);
        Assert.Equal("", Against(verified));
        Assert.All(verified, v => Assert.Contains(v.Statements, s => s is { Question: "print", Answer: Answer.Holds }));
    }

    /// <summary>Issued by version 0.1.0, kept since.</summary>
    [Theory]
    [InlineData("label-of-0.1.0.pdf")]
    [InlineData("report-of-0.1.0.pdf")]
    public async Task A_document_of_the_version_before_is_valid_by_the_register_and_alone_cannot_be_told(string name)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "Verifying", "Issued", name);
        var known = await issued.VerifiedAsync(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
        Assert.Equal("", Against([known]));
        Assert.Equal(Verdict.Valid, known.Verdict);
        var alone = Assert.Single(await VerifyAsync([file], null, SignatureTrust.InNobody));
        Assert.Equal(Verdict.CannotTell, alone.Verdict);
        Assert.Contains(alone.Statements, s =>
            s is { Question: "print", Answer: Answer.NotChecked } && s.Text.Text.Contains("version 0.1.0", StringComparison.Ordinal)
        );
    }

    /// <summary>The bytes differ in times alone, so that Poppler draws the same.</summary>
    [Fact]
    public async Task Printed_once_more_a_document_looks_the_same_to_poppler()
    {
        foreach (var file in new[] { issued.Report, issued.Label })
            Assert.Equal(
                ForgeryTests.Drawn(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken)),
                ForgeryTests.Drawn(await issued.ForgedAsync(file))
            );
    }

    private static string Kind(string number) =>
        number[0] switch
        {
            'R' => "report",
            'N' => "notice",
            'Q' => "quarantine-label",
            'D' => "due-label",
            'C' => "certificate",
            'E' => "record",
            'S' => "check-sheet",
            _ => "",
        };

    private static string Against(IReadOnlyList<VerifiedFile> verified) =>
        string.Join(
            '\n',
            verified.SelectMany(v => v.Statements.Where(s => s.Answer is Answer.Fails).Select(s => $"{v.Number}: {s.Text.Text}"))
        );

    private static Task<IReadOnlyList<VerifiedFile>> VerifyAsync(IReadOnlyList<string> files, string? register, SignatureTrust trust) =>
        VerifyDocuments.RunAsync(
            new VerifyRequest
            {
                Browser = OpenBrowser.Instance,
                Files = files,
                RegisterPath = register,
                Now = Now,
                Trust = trust,
            },
            TestContext.Current.CancellationToken
        );
}
