using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Tests.Issuing;
using ExamDocs.UseCases.Verifying;
using static ExamDocs.UseCases.Tests.Verifying.IssuedForVerifying;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>What was touched, taken back or made up is not valid, and the sentence says why.</summary>
public sealed class VerifyDocumentsTests(IssuedForVerifying issued)
{
    [Fact]
    public async Task The_untouched_is_valid_under_any_name_that_is_no_number()
    {
        foreach (var file in new[] { issued.Report, issued.Label })
        {
            Assert.Empty(Faults(await AgainstAsync(issued.Register, file)));
            var renamed = Path.Combine(issued.Folder, "Copy of a document.pdf");
            File.Copy(file, renamed, overwrite: true);
            var verified = await AgainstAsync(issued.Register, renamed);
            Assert.Empty(Faults(verified));
            Assert.Equal(Path.GetFileNameWithoutExtension(file), verified.Number);
        }
    }

    [Fact]
    public async Task Pages_printed_anew_from_the_same_data_say_the_same() =>
        Assert.Empty(Faults(await issued.VerifiedAsync(await issued.ForgedAsync(issued.Report))));

    [Fact]
    public async Task Files_that_took_each_others_names_are_told()
    {
        var fault = Assert.Single(
            Faults(
                await issued.VerifiedAsync(
                    await File.ReadAllBytesAsync(issued.Report, TestContext.Current.CancellationToken),
                    name: Path.GetFileName(issued.Label)
                )
            )
        );
        Assert.StartsWith($"name: the file is named {Path.GetFileNameWithoutExtension(issued.Label)}", fault, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_altered_added_left_out_or_moved_is_told()
    {
        await FailsAsync("print: ", html => Body(html, "CON-07", "CON-08"));
        await FailsAsync("print: ", html => html.Replace("</body>", "<p>fit for use</p></body>", StringComparison.Ordinal));
        await FailsAsync("print: ", html => Body(html, "CON-07", ""));
        await FailsAsync("print: ", html =>
            Body(html, "CON-07", "\u0001")
                .Replace("CON-01", "CON-07", StringComparison.Ordinal)
                .Replace("\u0001", "CON-01", StringComparison.Ordinal)
        );
        await FailsAsync("print: ", html => html.Replace("content: \"Page \"", "content: \"fit for use \"", StringComparison.Ordinal));

        async Task FailsAsync(string question, Func<string, string> change) =>
            Assert.StartsWith(
                question,
                Assert.Single(Faults(await issued.VerifiedAsync(await issued.ForgedAsync(issued.Report, change)))),
                StringComparison.Ordinal
            );

        static string Body(string html, string from, string to) =>
            html[..html.IndexOf("<body", StringComparison.Ordinal)]
            + html[html.IndexOf("<body", StringComparison.Ordinal)..].Replace(from, to, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outcomes_within_that_were_changed_are_told() =>
        Assert.StartsWith(
            "outcome: the record within gives other outcomes",
            Assert.Single(
                Faults(
                    await issued.VerifiedAsync(
                        await issued.ForgedAsync(issued.Report, null, "outcome.json", json =>
                            json.Replace("\"outcome\": \"fit\"", "\"outcome\": \"withdraw\"", StringComparison.Ordinal)
                        )
                    )
                )
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public async Task Reasons_within_that_were_changed_are_told() =>
        Assert.StartsWith(
            "outcome: the reasons within",
            Assert.Single(
                Faults(
                    await issued.VerifiedAsync(
                        await issued.ForgedAsync(issued.Report, null, "outcome.json", json =>
                            json.Replace("\"bearing\": \"for\"", "\"bearing\": \"neutral\"", StringComparison.Ordinal)
                        )
                    )
                )
            ),
            StringComparison.Ordinal
        );

    [Fact]
    public async Task A_record_within_that_was_changed_is_told()
    {
        var faults = Faults(
            await issued.VerifiedAsync(
                await issued.ForgedAsync(issued.Report, null, "examdocs.json", json =>
                    json.Replace("\"clear\"", "\"doubt\"", StringComparison.Ordinal)
                )
            )
        );
        Assert.Contains(faults, f => f.StartsWith("outcome: ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"asOf\": \"2026-05-12\"", "\"asOf\": \"2026-05-10\"")]
    [InlineData("\"language\": \"en\"", "\"language\": \"de\"")]
    [InlineData("\"issuedOn\": \"2026-05-12\"", "\"issuedOn\": \"2026-05-11\"")]
    [InlineData("\"format\"", "\"further\": 1, \"format\"")]
    public async Task What_it_rests_on_that_was_changed_is_told(string from, string to) =>
        Assert.NotEmpty(
            Faults(
                await issued.VerifiedAsync(
                    await issued.ForgedAsync(issued.Report, null, "document.json", json => json.Replace(from, to, StringComparison.Ordinal))
                )
            )
        );

    [Fact]
    public async Task Another_version_is_not_held_to_its_words_but_to_its_outcome()
    {
        var verified = await issued.VerifiedAsync(await issued.OfAnotherVersionAsync(issued.Report));
        Assert.Empty(Faults(verified));
        Assert.Contains(verified.Statements, s => s is { Question: "print", Answer: Answer.NotChecked });
        Assert.Equal(Verdict.Valid, verified.Verdict);
    }

    /// <summary>
    /// Under another browser's name and with fonts of its own a page may be set a little otherwise, but no word changes its row.
    /// </summary>
    [Theory]
    [InlineData("table.lines tbody tr td:nth-child(6), .item .item-outcome { position: relative; top: 9mm }")]
    [InlineData("table.lines tbody tr th.id, .item h3 { position: relative; top: -8mm }")]
    [InlineData("table.lines tbody tr td.next, .item .item-outcome { position: relative; left: -120mm }")]
    public async Task Words_moved_to_other_rows_are_told_whatever_browser_the_file_names(string style)
    {
        byte[] Renamed(byte[] pdf) => Forgery.Of(pdf, f => f.Objects("/Producer", facts => facts.Set("Producer", "(Skia/PDF m120)")));
        var moved = await issued.VerifiedAsync(
            Renamed(await issued.ForgedAsync(issued.Report, html => html.Replace("</style>", style + "</style>", StringComparison.Ordinal)))
        );
        Assert.Contains(Faults(moved), f => f.StartsWith("print: ", StringComparison.Ordinal));
        var elsewhere = await issued.VerifiedAsync(
            Renamed(await File.ReadAllBytesAsync(issued.Report, TestContext.Current.CancellationToken))
        );
        Assert.Empty(Faults(elsewhere));
        Assert.Contains(elsewhere.Statements, s => s is { Question: "print", Answer: Answer.NotChecked });
    }

    [Fact]
    public async Task What_the_register_says_of_the_number_is_told()
    {
        var pdf = await File.ReadAllBytesAsync(issued.Report, TestContext.Current.CancellationToken);
        await SaysAsync("is replaced on 2026-06-01 by R-2026-000009 (slip of the pen)", d =>
            d with
            {
                Ended = DocumentEnd.Replaced,
                EndedOn = new(2026, 6, 1),
                ReplacedBy = ["R-2026-000009"],
                EndedReason = "slip of the pen",
            }
        );
        await SaysAsync("is withdrawn on 2026-06-01 (wrong item)", d =>
            d with
            {
                Ended = DocumentEnd.Withdrawn,
                EndedOn = new(2026, 6, 1),
                EndedReason = "wrong item",
            }
        );
        await SaysAsync("is void (the disk was full): nothing was ever issued under it", d =>
            d with
            {
                State = DocumentState.Void,
                Sha256 = null,
                VoidReason = "the disk was full",
            }
        );
        await SaysAsync("is not issued yet", d => d with { State = DocumentState.Pending });
        await SaysAsync("is not the one that was issued", d => d with { Sha256 = new string('0', 64) });

        async Task SaysAsync(string sentence, Func<DocumentStatus, DocumentStatus> known) =>
            Assert.Contains(Faults(await issued.VerifiedAsync(pdf, known)), f => f.Contains(sentence, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_register_that_does_not_know_it_and_none_at_all_do_not_vouch_for_it()
    {
        var empty = Path.Combine(issued.Folder, "empty.db");
        DocumentRegister.Open(empty).Dispose();
        var elsewhere = await AgainstAsync(empty, issued.Report);
        Assert.Empty(Faults(elsewhere));
        Assert.Equal(Verdict.CannotTell, elsewhere.Verdict);
        Assert.Contains(elsewhere.Statements, s =>
            s is { Question: "register", Answer: Answer.NotChecked } && s.Text.Text.Contains("another register", StringComparison.Ordinal)
        );
        var none = await AgainstAsync(null, issued.Report);
        Assert.Empty(Faults(none));
        Assert.Equal(Verdict.CannotTell, none.Verdict);
        Assert.Contains($"for the SHA-256 of {none.Number}; it must be {none.Sha256}", none.Settle!.Text, StringComparison.Ordinal);
        Assert.Contains(none.Statements, s => s is { Question: "register", Answer: Answer.NotChecked });
    }

    [Fact]
    public async Task Cut_short_or_no_document_at_all_is_told()
    {
        var pdf = await File.ReadAllBytesAsync(issued.Label, TestContext.Current.CancellationToken);
        var random = new byte[50_000];
        new Random(7).NextBytes(random);
        byte[][] inputs =
        [
            [],
            "%PDF-1.7\n%%EOF"u8.ToArray(),
            random,
            [.. "%PDF-1.7\n"u8, .. random],
            .. Enumerable.Range(1, 40).Select(n => pdf[..(pdf.Length * n / 41)]),
        ];
        foreach (var input in inputs)
            Assert.Contains(Faults(await issued.VerifiedAsync(input)), f => f.StartsWith("data: ", StringComparison.Ordinal));
    }

    /// <summary>Every byte against the register; every so many against all questions, none of which may stop on it.</summary>
    [Fact]
    public async Task A_single_byte_changed_is_told()
    {
        var pdf = await File.ReadAllBytesAsync(issued.Label, TestContext.Current.CancellationToken);
        var number = Path.GetFileNameWithoutExtension(issued.Label);
        using var register = DocumentRegister.Open(issued.Register);
        var known = register.Find(number);
        for (var at = 0; at < pdf.Length; at++)
        {
            pdf[at] ^= (byte)(1 << (at % 8));
            Assert.Contains(RegisterQuestions.Ask(number, pdf, new(_ => known, null, null)), s =>
                s is { Question: "bytes", Answer: Answer.Fails }
            );
            if (at % 7919 == 0)
                Assert.False(
                    (
                        await issued.VerifiedAsync(pdf, asked => register.Find(asked.Number) ?? asked with { Sha256 = new string('0', 64) })
                    ).IsValid,
                    $"byte {at}"
                );
            pdf[at] ^= (byte)(1 << (at % 8));
        }
        Assert.Contains(RegisterQuestions.Ask(number, pdf, new(_ => known, null, null)), s =>
            s is { Question: "bytes", Answer: Answer.Holds }
        );
    }

    private static async Task<VerifiedFile> AgainstAsync(string? register, string file) =>
        Assert.Single(
            await VerifyDocuments.RunAsync(
                new VerifyRequest
                {
                    Browser = OpenBrowser.Instance,
                    Files = [file],
                    RegisterPath = register,
                    Now = Now,
                },
                TestContext.Current.CancellationToken
            )
        );
}
