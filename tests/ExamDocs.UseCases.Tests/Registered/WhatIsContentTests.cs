using ExamDocs.Documents.Signing;
using ExamDocs.Documents.Tests.Signing;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;
using SkiaSharp;
using static ExamDocs.UseCases.Tests.Registered.HelmetVisits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>What counts as the content of a document: letterhead, signature, language, photos; not how a version words it.</summary>
public sealed class WhatIsContentTests : IDisposable
{
    private readonly HelmetVisits _visits = new();

    public void Dispose() => _visits.Dispose();

    [Fact]
    public async Task Another_letterhead_replaces_and_a_run_that_names_none_leaves_what_is_there()
    {
        static Func<IssueRequest, IssueRequest> Under(string name) =>
            r => Reports(r) with { Style = new PrintStyle { Letterhead = new() { Name = name } } };
        var plain = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        var headed = Assert.Single((await _visits.IssueAsync(Visit(), Under("Elm and Rope Examiners"))).Documents);
        Assert.Equal([(plain.Number, "letterhead")], Replaces(headed));
        Assert.Contains(Pdf.Squeeze($"Replaces {plain.Number}: letterhead."), _visits.TextOf(headed), StringComparison.Ordinal);

        var again = Assert.Single((await _visits.IssueAsync(With(One, "purchased", "2023-09-06"), Reports)).Documents);
        Assert.Equal((headed.Number, false), (again.Number, again.IssuedNow));
        var moved = Assert.Single((await _visits.IssueAsync(Visit(), Under("Elm and Rope Examiners Ltd"))).Documents);
        Assert.Equal([moved.Number], _visits.Current());
    }

    [Fact]
    public async Task A_signature_is_content_by_its_name_and_its_certificate_may_be_renewed()
    {
        static Func<IssueRequest, IssueRequest> By(string name) =>
            r =>
                r with
                {
                    Only = ["report"],
                    Style = new PrintStyle { Signer = new DocumentSigner(TestAuthority.One.Key(TestAuthority.One.Certificate(name))) },
                };
        var plain = (await _visits.IssueAsync(Visit(), Reports)).Documents[0];
        var signed = (await _visits.IssueAsync(Visit(), By("Ada Invented"))).Documents[0];
        Assert.Equal([(plain.Number, "electronic signature")], Replaces(signed));
        foreach (var renewed in new[] { By("Ada Invented"), Reports })
            Assert.Equal(signed.Number, (await _visits.IssueAsync(Visit(), renewed)).Documents[0].Number);
        Assert.NotEqual(signed.Number, (await _visits.IssueAsync(Visit(), By("Bea Invented"))).Documents[0].Number);
    }

    [Fact]
    public async Task Each_language_is_a_document_of_its_own_and_none_outlives_what_it_says()
    {
        static Func<IssueRequest, IssueRequest> In(Language language) =>
            r =>
                PerItem(r) with
                {
                    Only = ["report"],
                    Style = new PrintStyle { Language = language },
                };
        var english = await _visits.IssueAsync(Visit(), In(Language.English));
        var german = await _visits.IssueAsync(Visit(), In(Language.German));
        Assert.Equal(4, _visits.Current().Count);

        var corrected = Assert.Single((await _visits.IssueAsync(SerialOfTwo(), In(Language.English))).Documents, d => d.IssuedNow);
        Assert.Equal([Of(english, Two).Number, Of(german, Two).Number], Replaces(corrected).Select(r => r.Number).Order());
        Assert.True(_visits.Find(Of(german, One).Number).IsCurrent);

        var inGerman = await _visits.IssueAsync(SerialOfTwo(), In(Language.German));
        var successor = Assert.Single(inGerman.Documents, d => d.IssuedNow);
        Assert.Contains(
            Pdf.Squeeze($"Ersetzt {Of(german, Two).Number}: Seriennummer von HEL-02."),
            _visits.TextOf(successor),
            StringComparison.Ordinal
        );
        Assert.Equal(4, _visits.Current().Count);
        _visits.IsSound();
    }

    [Fact]
    public async Task A_document_that_this_version_would_word_otherwise_stays_current_while_its_data_are_the_same()
    {
        var issued = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        string number;
        using (var register = DocumentRegister.Open(_visits.Register, new(2026, 5, 12)))
        {
            // As another version leaves it: the same data, and a page that this version would not print.
            var (pdf, visit) = (register.Content(issued.Document), register.Find(issued.Number)!.Visit);
            Assert.True(register.Withdraw(issued.Number, "only for this test"));
            var pending = register.Take(
                new DocumentRequest('R', 2026, "report", "a page of another version", issued.Items, null) { Language = "en", Visit = visit }
            );
            number = register.Publish(pending, pdf, issued.Document.Pages, issued.Document.OutcomesJson).Number;
        }
        var again = Assert.Single((await _visits.IssueAsync(Visit(), Reports)).Documents);
        Assert.Equal((number, false), (again.Number, again.IssuedNow));
        var corrected = Assert.Single((await _visits.IssueAsync(SerialOfTwo(), Reports)).Documents);
        Assert.Equal([(number, "serial of HEL-02")], Replaces(corrected));
    }

    /// <summary>The file of a regime may change while the record and the program stay the same.</summary>
    [Fact]
    public async Task Rules_of_the_users_own_are_content_but_not_how_their_file_is_spaced()
    {
        var record = Visit();
        record["visit"]!["regime"] = "fenmark-climbing";
        var text = await File.ReadAllTextAsync(
            Path.Combine(RepositoryRoot.Path, "docs", "regimes.md"),
            TestContext.Current.CancellationToken
        );
        var regime = text.ReplaceLineEndings("\n").Split("```json\n")[1].Split("```")[0];

        async Task<Issued> Issue(string rules)
        {
            var file = Path.Combine(_visits.Folder, "rules", "regimes", "fenmark.json");
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            await File.WriteAllTextAsync(file, rules, TestContext.Current.CancellationToken);
            var known = ReadRules.From(Path.Combine(_visits.Folder, "rules")).Rules!;
            return Assert.Single((await _visits.IssueAsync(record, r => Reports(r) with { Rules = known })).Documents);
        }

        var issued = await Issue(regime);
        Assert.Equal(issued.Number, (await Issue(regime.Replace("  ", " ", StringComparison.Ordinal))).Number);
        var renamed = await Issue(regime.Replace("\"name\": \"", "\"name\": \"New ", StringComparison.Ordinal));
        Assert.Equal([(issued.Number, "the user's own rules")], Replaces(renamed));
        Assert.Equal([renamed.Number], _visits.Current());
    }

    [Fact]
    public async Task A_photo_is_content_and_a_schedule_with_the_same_photo_still_holds()
    {
        async Task<Issued> PhotographedAsync(string bought, SKColor colour, Func<IssueRequest, IssueRequest> form)
        {
            var record = With(One, "purchased", bought);
            // Only items in blocks show their photos.
            record.ExaminationOf(One)["conclusion"] = "withdraw";
            record.ExaminationOf(One).Rows("observations").First(o => (string?)o["state"] == "clear")["photo"] = "shell.png";
            using var picture = new SKBitmap(40, 30);
            picture.Erase(colour);
            using var png = picture.Encode(SKEncodedImageFormat.Png, 100);
            await File.WriteAllBytesAsync(Path.Combine(_visits.Folder, "shell.png"), png.ToArray(), TestContext.Current.CancellationToken);
            return (await _visits.IssueAsync(record, form)).Documents[0];
        }
        var schedule = await PhotographedAsync("2023-09-05", SKColors.Orange, Reports);
        await PhotographedAsync("2023-09-06", SKColors.Orange, ReportsPerItem);
        Assert.True(_visits.Find(schedule.Number).IsCurrent);
        await PhotographedAsync("2023-09-07", SKColors.White, ReportsPerItem);
        Assert.False(_visits.Find(schedule.Number).IsCurrent);
    }

    private IEnumerable<(string Number, string Reason)> Replaces(Issued issued) =>
        _visits.Find(issued.Number).Replaces.Select(r => (r.Number, r.Reason));

    private static Issued Of(IssueResult result, string item) => result.Documents.Single(d => d.Items[0] == item);
}
