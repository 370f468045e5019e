using System.Text.Json.Nodes;
using ExamDocs.Core.Records;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Registered;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>Each gap is found where it was planted into a register in order, and nothing else is.</summary>
public sealed class FindGapsTests : IDisposable
{
    private readonly PackStory _story = new PackStory().InOrder();

    public void Dispose() => _story.Dispose();

    [Fact]
    public void A_register_in_order_has_none() => Assert.Empty(_story.Gaps());

    [Fact]
    public void Kit_that_is_overdue_has_no_document_in_date()
    {
        Assert.Empty(_story.Gaps("2026-11-11"));
        Assert.Equal(["no-document-in-date H-1", "no-document-in-date RB-1"], _story.Gaps("2026-11-12"));
    }

    [Fact]
    public void Kit_that_no_report_covers_has_no_document_in_date()
    {
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1"), "2026-05-20");
        _story.Enclose("Model connector.pdf");
        Assert.Equal(["no-document-in-date C-1"], _story.Gaps());
    }

    [Fact]
    public void Kit_that_could_not_be_determined_has_no_document_in_date()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Forgotten()), "2026-05-20");
        _story.Report(visit, "2026-05-20", "C-1");
        _story.Enclose("Model connector.pdf");
        Assert.Equal(["no-document-in-date C-1"], _story.Gaps());
    }

    [Fact]
    public void Kit_whose_report_was_made_for_somebody_else_has_no_document_here()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-20", "Birch Lane Ltd").Connector("C-1", "C1"), "2026-05-20");
        _story.Report(visit, "2026-05-20", "C-1");
        _story.Import(Visit("V-3", "2026-05-25").Connector("C-1", "C1", i => i.NotLookedAt()), "2026-05-25");
        _story.Enclose("Model connector.pdf");
        var pack = _story.Gather();
        Assert.Equal(["no-document-in-date C-1"], pack.Contents.Gaps.Select(g => $"{g.Code} {g.About}"));
        Assert.DoesNotContain(pack.Contents.Documents, d => d.Items.Contains("C-1", StringComparer.Ordinal));
    }

    [Fact]
    public void Kit_withdrawn_and_not_put_away_is_named_until_a_record_says_so()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-05-20");
        _story.Report(visit, "2026-05-20", "C-1");
        Assert.Equal(["no-quarantine-record C-1"], _story.Gaps());
        // The reasons in words: whoever reads the pack does not know the codes.
        var pack = _story.Gather().Contents;
        const string Said = "; the examiner concludes that it must be withdrawn; ";
        Assert.DoesNotContain("W6", pack.Gaps[0].Words, StringComparison.Ordinal);
        Assert.Contains(Said, pack.Gaps[0].Words, StringComparison.Ordinal);
        Assert.Contains(pack.Items, i => i.Item.Id == "C-1" && i.Why.Contains(Said, StringComparison.Ordinal));
        var german = _story.Gather(ask: a => a with { Language = Templates.Shared.Wording.Language.German }).Contents;
        Assert.DoesNotContain("concludes", german.Gaps[0].Words, StringComparison.Ordinal);
        // A later visit at which it is only listed changes nothing.
        _story.Import(
            Visit("V-3", "2026-05-25").Connector("C-1", "C1", i => i.NotLookedAt("not-presented")).Disposed("C-1", "quarantined"),
            "2026-05-25"
        );
        Assert.Empty(_story.Gaps());
    }

    /// <summary>The correction says nothing of quarantine, of a loss or of a repair any more.</summary>
    [Fact]
    public void What_a_correction_took_back_counts_no_more()
    {
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()).Disposed("C-1", "quarantined"), "2026-05-20");
        _story.Import(Visit("V-3", "2026-05-20").Connector("C-2", "C2", i => i.Cut()), "2026-05-20");
        _story.Import(Visit("V-4", "2026-05-21").Connector("C-2", "C2", i => i.NotLookedAt("lost")), "2026-05-21");
        _story.Import(
            Visit("V-5", "2026-05-13").Connector("C-3", "C3", i => i.LaterDefect("2026-06-01")).Harness("H-2", "A2"),
            "2026-05-13"
        );
        _story.Import(Visit("V-6", "2026-05-22").Harness("H-2", "A2").Repaired("C-3"), "2026-05-22");
        string[] gaps = ["no-quarantine-record C-1", "no-quarantine-record C-2", "remedy-not-recorded C-3"];
        Assert.DoesNotContain(_story.Gaps(), gaps.Contains);
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-05-23");
        _story.Import(Visit("V-4", "2026-05-21").Connector("C-2", "C2", i => i.Cut()), "2026-05-23");
        _story.Import(Visit("V-6", "2026-05-22").Harness("H-2", "A2"), "2026-05-23");
        Assert.Equal(gaps, _story.Gaps().Where(gaps.Contains));
    }

    [Fact]
    public void A_declaration_that_a_correction_took_back_is_missed()
    {
        var json = JsonNode.Parse(Visit("V-2", "2026-05-20").Connector("C-1", "C1").Json)!;
        json["items"]![0]!["declaration"] = new JsonObject { ["reference"] = "D-1", ["on"] = "2024-04-01" };
        _story.ImportJson(json.ToJsonString(), "2026-05-20");
        Assert.DoesNotContain("declaration-missing C-1", _story.Gaps());
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1"), "2026-05-21");
        Assert.Contains("declaration-missing C-1", _story.Gaps());
    }

    /// <summary>Two things bear one id: what was done with one of them says nothing of the other.</summary>
    [Fact]
    public void What_was_done_with_one_of_two_things_of_one_id_says_nothing_of_the_other()
    {
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-05-20");
        _story.Import(
            Visit("V-3", "2026-05-21").Connector("C-1", "C2", i => i.Not("C-1", "another serial").Cut()).Disposed("C-1", "quarantined"),
            "2026-05-21"
        );
        Assert.Equal(["no-quarantine-record C-1"], _story.Gaps().Where(g => g.Contains("C-1", StringComparison.Ordinal)));
    }

    [Fact]
    public void Each_row_without_an_id_is_a_gap_of_its_own()
    {
        _story.Import(Visit("V-2", "2026-05-20").Connector("", "C1").Connector("", "C2").Harness("H-2", "A2"), "2026-05-20");
        Assert.Equal(2, _story.Gaps().Count(g => g.Contains("without an id", StringComparison.Ordinal)));
    }

    /// <summary>It came back into use in between: what was put away before says nothing of now.</summary>
    [Fact]
    public void An_older_quarantine_does_not_count_for_a_new_withdrawal()
    {
        _story.Import(Visit("V-2", "2026-05-13").Connector("C-1", "C1", i => i.Concluded()).Disposed("C-1", "quarantined"), "2026-05-13");
        var fit = _story.Import(
            Visit("V-3", "2026-05-16").Connector("C-1", "C1").Released("C-1", "2026-05-13", "examined-again"),
            "2026-05-16"
        );
        _story.Report(fit, "2026-05-16", "C-1");
        _story.Enclose("Model connector.pdf");
        Assert.Empty(_story.Gaps());
        _story.Import(Visit("V-4", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-05-20");
        Assert.Equal(["no-quarantine-record C-1"], _story.Gaps());
    }

    [Theory]
    [InlineData("lost")]
    [InlineData("destroyed")]
    public void What_is_lost_or_destroyed_needs_no_quarantine(string status)
    {
        _story.Import(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "2026-05-20");
        _story.Import(Visit("V-3", "2026-05-25").Connector("C-1", "C1", i => i.NotLookedAt(status)), "2026-05-25");
        Assert.Empty(_story.Gaps());
    }

    [Fact]
    public void A_defect_whose_day_has_come_without_a_remedy_is_named()
    {
        var visit = _story.Import(Visit("V-2", "2026-05-13").Connector("C-1", "C1", i => i.LaterDefect("2026-06-01")), "2026-05-13");
        _story.Report(visit, "2026-05-13", "C-1");
        _story.Enclose("Model connector.pdf");
        Assert.Empty(_story.Gaps("2026-05-31"));
        Assert.Equal(["no-quarantine-record C-1", "remedy-not-recorded C-1"], _story.Gaps("2026-06-01"));
        _story.Import(Visit("V-3", "2026-05-30").Harness("H-2", "A2").Repaired("C-1"), "2026-05-30");
        Assert.DoesNotContain("remedy-not-recorded C-1", _story.Gaps("2026-06-01"));
    }

    [Fact]
    public void A_remedy_after_the_day_of_the_pack_is_not_known_yet()
    {
        _story.Import(Visit("V-2", "2026-05-13").Connector("C-1", "C1", i => i.LaterDefect("2026-06-01")), "2026-05-13");
        _story.Import(Visit("V-3", "2026-06-05").Harness("H-2", "A2").Repaired("C-1"), "2026-06-05");
        Assert.Contains("remedy-not-recorded C-1", _story.Gaps("2026-06-01"));
    }

    [Fact]
    public void A_replaced_document_that_still_lies_where_it_was_issued_is_named()
    {
        var folder = _story.At("out");
        var first = _story.Issue(1, "2026-05-13", "notice", ["H-1"], folder);
        Assert.Empty(_story.Gaps());
        _story.Issue(1, "2026-05-14", "notice", ["H-1"], folder, first);
        var gap = Assert.Single(_story.Gather().Contents.Gaps);
        Assert.Equal(("replaced-in-circulation", first), (gap.Code, gap.About));
        Assert.Contains($"{first}.pdf", gap.Words, StringComparison.Ordinal);
        // On the day before, nobody had replaced it.
        Assert.Empty(_story.Gaps("2026-05-13"));
        Directory.CreateDirectory(Path.Combine(folder, "replaced"));
        File.Move(Path.Combine(folder, $"{first}.pdf"), Path.Combine(folder, "replaced", $"{first}.pdf"));
        Assert.Empty(_story.Gaps());
    }

    [Fact]
    public void A_replaced_document_is_named_also_where_its_file_ends_in_capital_letters()
    {
        var folder = _story.At("out");
        var first = _story.Issue(1, "2026-05-13", "notice", ["H-1"], folder);
        _story.Issue(1, "2026-05-14", "notice", ["H-1"], folder, first);
        File.Move(Path.Combine(folder, $"{first}.pdf"), Path.Combine(folder, $"{first} OLD.PDF"));
        var gap = Assert.Single(_story.Gather().Contents.Gaps);
        Assert.Equal(("replaced-in-circulation", first), (gap.Code, gap.About));
        Assert.Contains($"{first} OLD.PDF", gap.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Model harness declaration.pdf", "H-1")]
    [InlineData("Model rope-bridge declaration.pdf", "RB-1")]
    public void A_declaration_that_the_law_has_kept_is_missed(string file, string item)
    {
        File.Delete(Path.Combine(_story.Evidence, file));
        Assert.Equal([$"declaration-missing {item}"], _story.Gaps());
    }

    [Fact]
    public void A_declaration_in_the_record_is_enough_and_other_law_asks_for_none()
    {
        File.Delete(Path.Combine(_story.Evidence, "Model harness declaration.pdf"));
        var json = JsonNode.Parse(Visit("V-2", "2026-05-20").Harness("H-1", "A1").Json)!;
        json["items"]![0]!["declaration"] = new JsonObject { ["reference"] = "D-1", ["on"] = "2024-04-01" };
        _story.Report(_story.ImportJson(json.ToJsonString(), "2026-05-20"), "2026-05-20", "H-1");
        Assert.Empty(_story.Gaps());
        var other = JsonNode.Parse(Visit("V-3", "2026-05-21").Connector("C-1", "C1").Json)!;
        other["visit"]!["regime"] = "gb-wah";
        _story.Report(_story.ImportJson(other.ToJsonString(), "2026-05-21"), "2026-05-21", "C-1");
        Assert.DoesNotContain("declaration-missing C-1", _story.Gaps());
    }

    [Fact]
    public void An_examiner_without_evidence_is_named_by_the_name_recorded()
    {
        File.Delete(Path.Combine(_story.Evidence, "ada fenn, guild certificate.pdf"));
        Assert.Equal(["no-competence-evidence Ada Fenn"], _story.Gaps());
        _story.Enclose("EX1-certificate.pdf");
        Assert.Empty(_story.Gaps());
    }

    /// <summary>Two records may call two people ex1: then the id tells neither.</summary>
    [Fact]
    public void An_id_that_two_examiners_have_is_evidence_of_neither()
    {
        File.Delete(Path.Combine(_story.Evidence, "ada fenn, guild certificate.pdf"));
        _story.Report(_story.Import(Visit("V-2", "2026-05-20").Harness("H-2", "A2").By("Bo Larch"), "2026-05-20"), "2026-05-20", "H-2");
        _story.Enclose("ex1.pdf");
        Assert.Equal(["no-competence-evidence Ada Fenn", "no-competence-evidence Bo Larch"], _story.Gaps());
    }

    [Fact]
    public void A_record_that_decides_otherwise_now_is_named_if_it_is_of_this_employer()
    {
        Remember(Visit("V-2", "2026-05-20").Connector("C-1", "C1", i => i.Cut()), "fit");
        Remember(Visit("V-3", "2026-05-21", "Birch Lane Ltd").Connector("C-9", "C9", i => i.Cut()), "fit");
        var gaps = _story.Gather().Contents.Gaps;
        var otherwise = Assert.Single(gaps, g => g.Code is "decided-otherwise");
        Assert.Contains("C-1 is stored fit", otherwise.Words, StringComparison.Ordinal);
        // Of the other employer's kit nothing is said but that something is wrong.
        Assert.Single(gaps, g => g.Code is "register-not-sound");
        Assert.DoesNotContain(gaps, g => g.Words.Contains("C-9", StringComparison.Ordinal));
    }

    [Fact]
    public void A_document_that_is_no_longer_as_issued_is_named_and_left_out()
    {
        var altered = _story.Issue(1, "2026-05-13", "notice", ["H-1"]);
        Tampering.Alter(_story.Register, $"UPDATE content SET bytes = x'25504446' WHERE number = '{altered}'");
        var pack = _story.Gather();
        Assert.Contains(pack.Contents.Gaps, g => g.Code is "document-missing-or-differs" && g.About == altered);
        Assert.DoesNotContain(pack.Contents.Documents, d => d.Number == altered);
        Assert.DoesNotContain(pack.Enclosed, d => d.Number == altered);
    }

    [Fact]
    public void Kit_that_no_visit_decided_about_is_named()
    {
        _story.Import(Visit("V-2", "2026-05-20").Harness("H-2", "A2").Renewed("H-2", "RB-OLD", null), "2026-05-20");
        Assert.Contains("no-document-in-date RB-OLD", _story.Gaps());
    }

    private void Remember(StoryVisit visit, string outcome)
    {
        var json = System.Text.Encoding.UTF8.GetBytes(visit.Json);
        var record = Intake.Json.EmbeddedRecord.Read(json, "register").Record!;
        using var register = DocumentRegister.Open(_story.Register, PackStory.Day("2026-05-25"));
        register.Visits.Remember(
            new VisitToRemember(
                record,
                json,
                [
                    new RememberedOutcome(record.Items[0].Id, outcome, [])
                    {
                        ExaminedOn = record.Visit.ExaminedOn,
                        NextBy = record.Visit.ExaminedOn!.Value.PlusMonths(6),
                    },
                ]
            )
            {
                Version = ExamDocs.UseCases.Issuing.ProgramVersion.Current,
                AsOf = record.Visit.ExaminedOn,
            }
        );
    }
}
