using System.Security.Cryptography;
using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class ExampleDocumentsTests(ExampleIssued example)
{
    [Fact]
    public void Nothing_failed_and_every_file_is_sound()
    {
        Assert.Null(example.Result.Failure);
        Assert.NotEmpty(example.Result.Documents);
        foreach (var issued in example.Result.Documents)
            Assert.Null(Pdf.Objection(example.File(issued)));
    }

    [Fact]
    public void Every_item_that_may_not_be_used_has_its_label_and_no_other_has_one()
    {
        var expected = example.Visit.Items.Where(i => i.Outcome is Outcome.Withdraw or Outcome.Undetermined).Select(i => i.Item.Id!);
        Assert.Equal(expected.Order(StringComparer.Ordinal), ItemsOf("quarantine-label"), StringComparer.Ordinal);
    }

    [Fact]
    public void Every_withdrawal_and_every_defect_has_its_notice_and_nothing_else_has_one()
    {
        var expected = example
            .Visit.Items.Where(i => i.Outcome is Outcome.Withdraw || i.Examination?.Defects.Count > 0)
            .Select(i => i.Item.Id!);
        Assert.Equal(expected.Order(StringComparer.Ordinal), ItemsOf("notice"), StringComparer.Ordinal);
    }

    [Fact]
    public void Certificates_are_for_renewed_items_that_are_fit_and_for_nothing_else()
    {
        var certificates = example.Result.Documents.Where(d => d.Document.Kind == "certificate").ToList();
        Assert.Equal(2, certificates.Count);
        foreach (var certificate in certificates)
        {
            foreach (var id in certificate.Document.Items)
                Assert.Contains(example.Visit.Items, i => i.Item.Id == id && i.Outcome is Outcome.Fit or Outcome.FitUntil);
            Assert.Contains(example.Visit.Record.Renewals, r => r.Item == certificate.Document.Items[0]);
        }
    }

    [Fact]
    public void Every_item_is_reported_once_or_refused_with_codes()
    {
        var reported = example
            .Result.Documents.Where(d => d.Document.Kind == "report" && d.CopyOf is null)
            .SelectMany(d => d.Document.Items)
            .Order(StringComparer.Ordinal)
            .ToList();
        var refused = example.Result.Refused.Select(r => r.Item).ToList();
        Assert.Equal(reported.Distinct(StringComparer.Ordinal), reported, StringComparer.Ordinal);
        Assert.Equal(
            example.Visit.Items.Select(i => i.Item.Id!).Order(StringComparer.Ordinal),
            reported.Concat(refused).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.All(example.Result.Refused, r => Assert.NotEmpty(r.Codes));
    }

    [Fact]
    public void The_list_of_documents_agrees_with_the_files()
    {
        using var list = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(example.Folder, "documents.json")));
        Assert.Equal("examdocs-documents/1", list.RootElement.GetProperty("format").GetString());
        var rows = list.RootElement.GetProperty("documents").EnumerateArray().ToList();
        Assert.Equal(
            Directory.GetFiles(example.Folder, "*.pdf").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
            rows.Select(r => r.GetProperty("file").GetString()!).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        foreach (var row in rows)
        {
            var bytes = File.ReadAllBytes(Path.Combine(example.Folder, row.GetProperty("file").GetString()!));
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), row.GetProperty("sha256").GetString());
            using var pdf = UglyToad.PdfPig.PdfDocument.Open(bytes);
            Assert.Equal(pdf.NumberOfPages, row.GetProperty("pages").GetInt32());
            foreach (var outcome in row.GetProperty("outcomes").EnumerateObject())
                Assert.Equal(example.Visit.Items.Single(i => i.Item.Id == outcome.Name).Outcome.Word(), outcome.Value.GetString());
        }
    }

    [Fact]
    public void Every_page_bears_its_number_and_its_place()
    {
        foreach (var issued in example.Result.Documents)
        {
            using var pdf = UglyToad.PdfPig.PdfDocument.Open(File.ReadAllBytes(example.File(issued)));
            for (var page = 1; page <= pdf.NumberOfPages; page++)
            {
                var text = string.Join(' ', pdf.GetPage(page).GetWords().Select(w => w.Text));
                Assert.Contains(issued.Document.Number, text, StringComparison.Ordinal);
                Assert.Contains($"Page {page} of {pdf.NumberOfPages}", text, StringComparison.Ordinal);
            }
        }
    }

    private List<string> ItemsOf(string kind) =>
        [.. example.Result.Documents.Where(d => d.Document.Kind == kind).SelectMany(d => d.Document.Items).Order(StringComparer.Ordinal)];
}
