using System.Text;
using ExamDocs.Core;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.Intake;
using ExamDocs.Intake.Json;
using ExamDocs.Proof.Tests.Generating;
using NodaTime;

namespace ExamDocs.Proof.Tests.Embedding;

/// <summary>What goes into a document and comes out of it again is determined as before, whatever was wrong with it.</summary>
public sealed class EmbeddedRecordTests
{
    /// <summary>What is kept of a finding must say the same in every language, not in English alone.</summary>
    private static readonly Core.Findings.MessageLanguage German = Core.Sentences.Messages.TranslatedMessages.German;

    private static int Records => Effort.Of(250, 100_000);

    [Fact]
    public void Every_generated_record_comes_back_with_the_same_outcomes()
    {
        for (var seed = 0; seed < Records; seed++)
        {
            var (first, asOf) = Read(seed);
            var embedded = EmbeddedRecord.Write(first.Record!, first.Findings);
            var again = EmbeddedRecord.Read(embedded, "report.pdf");
            Assert.Equal(Said(first, asOf), Said(again, asOf));
            Assert.Equal(embedded, EmbeddedRecord.Write(again.Record!, again.Findings));
        }
    }

    /// <summary>Taken out of the document and checked by itself, a record that was hard to read must not look like a good one.</summary>
    [Fact]
    public void Read_as_a_plain_record_none_comes_out_better()
    {
        var withFaults = 0;
        for (var seed = 0; seed < Records; seed++)
        {
            var (first, asOf) = Read(seed);
            var plain = JsonRecordReader.Read(EmbeddedRecord.Write(first.Record!, first.Findings), "examdocs.json");
            withFaults += first.Findings.Count > 0 ? 1 : 0;
            Assert.All(Determined(first, asOf).Items.Zip(Determined(plain, asOf).Items), pair =>
                Assert.True(pair.Second.Outcome >= pair.First.Outcome, $"seed {seed}: {pair.First.Outcome} became {pair.Second.Outcome}")
            );
        }
        Assert.InRange(withFaults, Records / 50, Records);
    }

    [Fact]
    public void A_date_that_could_not_be_read_is_not_replaced_by_the_visits()
    {
        var draft = Generator.Make(1, []);
        draft.Exam(0)["examinedOn"] = "31/02/2026";
        var first = JsonRecordReader.Read(Encoding.UTF8.GetBytes(draft.Json()), "record.json");
        var again = EmbeddedRecord.Read(EmbeddedRecord.Write(first.Record!, first.Findings), "report.pdf");
        Assert.Contains(again.Record!.Examinations, e => e.ExaminedOnUnreadable);
        Assert.Equal(first.Findings.Select(Said), again.Findings.Select(Said));

        static (string Code, Core.Findings.Severity, string Path, string Message, string Hint, string? Item) Said(
            Core.Findings.Finding finding
        ) => (finding.Code, finding.Severity, finding.Path, finding.Message.In(German), finding.Hint.In(German), finding.Item);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{\"reading\":[{\"code\":\"INT999\",\"path\":\"/items/0\",\"message\":\"x\"}]}")]
    [InlineData("{\"reading\":[{\"code\":\"INT001\"}]}")]
    [InlineData("{\"reading\":[7]}")]
    public void What_is_no_such_record_is_refused(string json) =>
        Assert.NotNull(EmbeddedRecord.Read(Encoding.UTF8.GetBytes(json), "report.pdf").Unreadable);

    private static (ReadResult Read, LocalDate AsOf) Read(int seed)
    {
        var draft = Generator.Make(seed);
        var read = JsonRecordReader.Read(Encoding.UTF8.GetBytes(draft.Json()), "record.json");
        return (read, new LocalDate(draft.AsOf.Year, draft.AsOf.Month, draft.AsOf.Day));
    }

    private static DeterminedVisit Determined(ReadResult read, LocalDate asOf) =>
        Determine.Visit(read.Record!, read.Findings, History.None, asOf);

    private static List<string> Said(ReadResult read, LocalDate asOf)
    {
        var visit = Determined(read, asOf);
        return
        [
            .. visit.Everything.Select(i =>
                $"{i.Item.Id}: {i.Outcome} {i.Until} {i.NextExaminationBy} {string.Join("; ", i.Reasons)} "
                + $"{string.Join("; ", i.CaseForService)}"
            ),
            .. visit
                .Findings.Where(f => f.Severity == Severity.Error)
                .Select(f => $"{f.Code} {f.Path} {f.Message} {f.Hint}")
                .Order(StringComparer.Ordinal),
        ];
    }
}
