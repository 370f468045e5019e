using System.Globalization;
using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>
/// SI 1998/2307 Schedule 1, paragraph by paragraph (8(d) to 11 from memory): each particular of each item is found by
/// pdftotext in that item's own report. The expected words are made here from the record, not by the templates.
/// </summary>
public sealed class Schedule1ParticularsTests(ExampleIssued example)
{
    [Fact]
    public void Every_item_report_holds_every_particular()
    {
        var reports = example.PerItem.Documents;
        Assert.NotEmpty(reports);
        var missing = new List<string>();
        foreach (var report in reports)
        {
            Assert.Single(report.Document.Items);
            var item = example.Visit.Items.Single(i => i.Item.Id == report.Document.Items[0]);
            var text = Pdf.Squeeze(Pdf.Text(example.PerItemFile(report)));
            missing.AddRange(
                Particulars(item)
                    .Where(p => !text.Contains(Pdf.Squeeze(p.Words), StringComparison.OrdinalIgnoreCase))
                    .Select(p => $"{item.Item.Id} para {p.Paragraph}: {p.Words}")
            );
        }
        Assert.Empty(missing);
    }

    [Fact]
    public void The_schedule_names_every_item_with_its_outcome()
    {
        foreach (var report in example.Result.Documents.Where(d => d.Document.Kind == "report"))
        {
            var text = Pdf.Text(example.File(report));
            Assert.All(report.Document.Items, id => Assert.Contains(id, text, StringComparison.Ordinal));
        }
    }

    private IEnumerable<(string Paragraph, string Words)> Particulars(DeterminedItem item)
    {
        var visit = example.Visit.Record.Visit;
        var examination = item.Examination!;
        yield return ("1", visit.Employer!.Name!);
        yield return ("1", visit.Employer.Address!);
        yield return ("2", visit.Premises!.Address!);
        foreach (
            var words in new[]
            {
                item.Item.Id,
                item.Item.Description,
                item.Item.Maker,
                item.Item.Model,
                item.Item.Serial,
                item.Item.OwnersMark,
                item.Item.PartNumber,
            }
        )
        {
            if (words is not null)
                yield return ("3", words);
        }
        yield return ("3", item.Item.Manufactured is { } made ? Day(made) : "not known");
        yield return (
            "4",
            item.LastExamined is { } last ? Day(last)
            : examination.Basis is Basis.FirstUse or Basis.Installation ? "first"
            : "not known"
        );
        if (item.Item.SafeWorkingLoad is { } load)
            yield return ("5", load.NotMarked ? load.Basis! : Load(load.Value!.Value, load.Unit!));
        if (string.Equals(item.RegimeId, "gb-loler", StringComparison.Ordinal))
            yield return ("6, 7(a)", BasisWords(examination));
        yield return ("7(b)", item.Outcome is Outcome.Withdraw ? "Would be safe to operate: no" : "Would be safe to operate: yes");
        foreach (var defect in examination.Defects)
        {
            yield return ("8(a)", defect.Part!);
            yield return ("8(a)", defect.Description!);
            yield return (defect.Danger is Danger.Now ? "8(b)" : "8(c)(ii)", defect.Remedy!);
            if (defect.BecomesDangerOn is { } day)
                yield return ("8(c)(i)", Day(day));
        }
        if (item.NextExaminationBy is { } next)
            yield return ("8(d)", Day(next));
        foreach (var test in examination.Tests)
        {
            yield return ("8(e)", test.Description!);
            yield return ("8(e)", test.Result!);
        }
        yield return ("8(f)", Day(item.ExaminedOn!.Value));
        var author = example.Visit.Person(examination.Author ?? examination.Examiner)!;
        var signer = example.Visit.Person(examination.AuthenticatedBy ?? examination.Examiner)!;
        foreach (
            var words in new[]
            {
                author.Name!,
                author.Address!,
                author.Qualifications!,
                author.SelfEmployed is true ? "self-employed" : author.Employer!.Address!,
            }
        )
            yield return ("9", words);
        yield return ("10", signer.Name!);
        yield return ("10", signer.Address!);
        yield return ("11", Day(visit.ReportedOn!.Value));
    }

    private static string Load(decimal value, string unit) =>
        (value, unit) is (1, "persons") ? "1 person" : $"{value.ToString("0.#####", CultureInfo.InvariantCulture)} {unit}";

    private static string BasisWords(Examination examination) =>
        examination.Basis switch
        {
            Basis.SixMonth => "6 months",
            Basis.TwelveMonth => "12 months",
            Basis.Scheme => examination.Scheme!.Reference!,
            Basis.Exceptional => examination.Event!.What!,
            Basis.Installation => "installation",
            _ => "first",
        };

    private static string Day(LocalDate day) => day.ToString("d MMM uuuu", CultureInfo.InvariantCulture);

    private static string Day(PartialDate date) =>
        date switch
        {
            { IsWholeDay: true } => Day(date.Earliest),
            { Month: not null } => date.Earliest.ToString("MMM uuuu", CultureInfo.InvariantCulture),
            _ => date.ToString(),
        };
}
