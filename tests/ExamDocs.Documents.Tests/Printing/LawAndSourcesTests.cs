using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using ExamDocs.Templates;
using ExamDocs.Templates.Evidence;
using ExamDocs.Templates.Notice;
using ExamDocs.Templates.Report;

namespace ExamDocs.Documents.Tests.Printing;

/// <summary>
/// What each regime's evidence file says of its law, its interval, how long to keep the report, and how surely that is known; and what of
/// it the report says.
/// </summary>
public sealed class LawAndSourcesTests
{
    /// <summary>Regime, a law, the interval line, the retention line; the example is examined on 11 and reported on 12 May 2026.</summary>
    public static TheoryData<string, string, string, string> Regimes =>
        new()
        {
            // SI 1998/2307 regs 9(3)(a)(i) and 11(2)(a)(iv)
            {
                "gb-loler",
                "(SI 1998/2307); read in the source.",
                "At most 6 months for equipment that lifts persons (SI 1998/2307 reg 9(3)(a)(i); read in the source).",
                "not before 12\u00A0May 2028 (SI 1998/2307 reg 11(2)(a)(iv); read in the source)"
            },
            // SR 1999/304 reg 9 read, reg 11 from memory
            {
                "ni-loler",
                "(SR 1999/304); read in the source.",
                "At most 6 months for equipment that lifts persons (SR 1999/304 reg 9(3)(a)(i); read in the source).",
                "not before 12\u00A0May 2028 (SR 1999/304 reg 11(2)(a)(iv); wording not checked against the original)"
            },
            // EN 365:2004 4.4, unofficial copy; Directive 2009/104/EC art 5 gives no years
            {
                "eu-en365",
                "(EN 365:2004); read in an unofficial copy.",
                "(EN 365:2004 4.4; read in an unofficial copy).",
                "which it is was not found (Directive 2009/104/EC art 5; read in the source)."
            },
            // BetrSichV sec 14(7)
            {
                "de",
                "(BetrSichV sec 14); read in the source.",
                "At most 12 months",
                "Keep this report at least until the next test (BetrSichV sec 14(7); read in the source)."
            },
            // Arrêté of 19 March 1993 art 1; Code du travail D4711-3, as quoted elsewhere
            {
                "fr",
                "(arrêté of 19 March 1993); read in the source.",
                "Less than 12 months for the general periodic verification",
                "for five years, and always the last two, so not before 12\u00A0May 2031 (Code du travail D4711-3; read in an unofficial copy)"
            },
            // AS/NZS 1891.4:2009 Table 9.1, unofficial copy
            { "au-nz", "(AS/NZS 1891.4:2009); read in an unofficial copy.", "At most 6 months", "not found in a source" },
            // 29 CFR 1910.140(c)(17) and (18), as quoted elsewhere
            { "us", "(29 CFR 1910.140); read in an unofficial copy.", "At most 6 months", "not found in a source" },
        };

    [Theory]
    [MemberData(nameof(Regimes))]
    public void The_evidence_file_names_law_interval_and_retention_with_their_confidence(
        string regime,
        string law,
        string interval,
        string keep
    )
    {
        var lines = Evidence(regime).Law.Lines;
        Assert.Contains(lines, l => l.Heading == "Law" && l.Text.EndsWith(law, StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Heading == "Interval" && l.Text.Contains(interval, StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Heading == "Retention" && l.Text.Contains(keep, StringComparison.Ordinal));
        Assert.Equal(regime is not "gb-loler", lines.Any(l => l.Heading == "Not confirmed"));
    }

    /// <summary>The report names the law, and of it what was not read in its source; no limit, no retention, no word on memory.</summary>
    [Theory]
    [InlineData("gb-loler", "SI 1998/2307 Schedule 1 para 8(d), 8(e), 8(f), 9, 10, 11")]
    [InlineData("eu-en365", "EN 365:2004")]
    [InlineData("fr", "Code du travail R4323-100")]
    [InlineData("us", "29 CFR 1910.140")]
    public void The_report_names_the_law_and_what_of_it_was_not_read(string regime, string notRead)
    {
        var lines = Report(regime).Law.Lines;
        Assert.NotEmpty(lines.Where(l => l.Heading == "Law"));
        var confirmed = Evidence(regime).Law.Lines.Any(l => l.Heading == "From memory");
        if (confirmed)
            Assert.Contains(
                notRead,
                Assert.Single(lines, l => l.Heading == "Wording not checked against the original").Text,
                StringComparison.Ordinal
            );
        Assert.DoesNotContain(lines, l => l.Heading is "Interval" or "Retention" or "From memory");
        Assert.DoesNotContain(lines, l =>
            l.Heading != "Not confirmed" && l.Text.Contains("from memory", StringComparison.OrdinalIgnoreCase)
        );
    }

    [Fact]
    public async Task Both_are_on_their_pages()
    {
        await using var renderer = new Documents.Rendering.DocumentRenderer();
        var evidence = System.Net.WebUtility.HtmlDecode(await renderer.HtmlAsync(Evidence("fr")));
        Assert.Contains("Less than 12 months for the general periodic verification", evidence, StringComparison.Ordinal);
        var report = System.Net.WebUtility.HtmlDecode(await renderer.HtmlAsync(Report("fr")));
        Assert.Contains("Wording not checked against the original", report, StringComparison.Ordinal);
        Assert.Contains(
            "How long reports are kept (Code du travail D4711-3) was read in a copy made by others.",
            report,
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Of an examination that names another law than the visit: both laws, the shorter interval, what both say of keeping it.
    /// </summary>
    [Fact]
    public void Two_laws_are_both_named()
    {
        var id = Example
            .Visit.Items.First(i => i is { Outcome: Outcome.Fit, RegimeId: "gb-loler", Item.Purpose: Purpose.LiftsPersons })
            .Item.Id!;
        var (visit, item) = Example.WithExamination(id, e => e with { Regime = "de" });
        var author = visit.Person(item.Examination!.Examiner)!;
        var report = new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], author, author);
        Assert.True(report.Regime.HasKeys);
        Assert.Contains(report.Law.Lines, l => l.Heading == "Law" && l.Text.Contains("SI 1998/2307", StringComparison.Ordinal));
        Assert.Contains(report.Law.Lines, l => l.Heading == "Law" && l.Text.Contains("BetrSichV", StringComparison.Ordinal));
        var evidence = new EvidenceModel(Example.Identity(DocumentTypes.Evidence), visit, [item]);
        Assert.Equal(
            2,
            evidence.Law.Lines.Count(l =>
                l.Heading == "Law"
                && (l.Text.Contains("SI 1998/2307", StringComparison.Ordinal) || l.Text.Contains("BetrSichV", StringComparison.Ordinal))
            )
        );
        Assert.StartsWith(
            "At most 6 months",
            Assert.Single(evidence.Law.Lines, l => l.Heading == "Interval").Text,
            StringComparison.Ordinal
        );
        Assert.Contains(evidence.Law.Lines, l =>
            l.Heading == "Retention"
            && l.Text.Contains("SI 1998/2307 reg 11", StringComparison.Ordinal)
            && l.Text.Contains("BetrSichV", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// SI 1998/2307 reg 10(4); for Northern Ireland which authority it is was not confirmed, and elsewhere no source names one.
    /// </summary>
    [Theory]
    [InlineData("gb-loler", "Health and Safety Executive")]
    [InlineData("ni-loler", "The enforcing authority")]
    [InlineData("fr", null)]
    [InlineData("us", null)]
    public void A_notice_names_an_authority_only_where_the_law_does(string regime, string? authority)
    {
        var (visit, item) = Under(regime, e => e with { Defects =
                [
                    new Defect
                    {
                        Part = "sheath",
                        Description = "cut",
                        Danger = Danger.Now,
                        Remedy = "destroy",
                        ImminentRisk = true,
                    },
                ], Conclusion = Conclusion.Withdraw });
        Assert.NotNull(visit.Record.Visit.HiredFrom);
        var named = new NoticeModel(Example.Identity(DocumentTypes.Notice), visit, item).Authority;
        if (authority is null)
            Assert.Null(named);
        else
            Assert.StartsWith(authority, named, StringComparison.Ordinal);
        Assert.Equal(regime is "gb-loler", named?.Contains("Executive", StringComparison.Ordinal) is true);
    }

    private static EvidenceModel Evidence(string regime)
    {
        var (visit, item) = Under(regime, e => e);
        return new EvidenceModel(Example.Identity(DocumentTypes.Evidence), visit, [item]);
    }

    private static ReportModel Report(string regime)
    {
        var (visit, item) = Under(regime, e => e);
        var author = visit.Person(item.Examination!.Examiner)!;
        return new ReportModel(Example.Identity(DocumentTypes.Report), visit, [item], author, author);
    }

    /// <summary>A fit item of the example that lifts persons, examined out of its turn so that no basis shortens the interval.</summary>
    private static (DeterminedVisit Visit, DeterminedItem Item) Under(string regime, Func<Examination, Examination> change)
    {
        var id = Example
            .Visit.Items.First(i => i is { Outcome: Outcome.Fit, RegimeId: "gb-loler", Item.Purpose: Purpose.LiftsPersons })
            .Item.Id!;
        return Example.WithExamination(
            id,
            e =>
                change(
                    e with
                    {
                        Basis = Basis.Exceptional,
                        Event = new ExceptionalEvent { What = "flood in the store", On = new(2026, 5, 2) },
                    }
                ),
            regime
        );
    }
}
