using ExamDocs.Core.Records;
using ExamDocs.Documents.LabelSheets;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;

namespace ExamDocs.UseCases.Tests.Issuing;

public sealed class DueLabelIssuingTests(ExampleIssued example)
{
    [Fact]
    public void Every_item_that_may_stay_in_service_and_be_reported_has_its_next_examination_label_and_no_other_has_one()
    {
        var expected = example
            .Visit.Items.Where(i => i.Outcome is Outcome.Fit or Outcome.FitUntil && i.MayBeReported)
            .Select(i => i.Item.Id!);
        var labelled = example.Result.Documents.Where(d => d.Document.Kind == "due-label").SelectMany(d => d.Document.Items);
        Assert.Equal(expected.Order(StringComparer.Ordinal), labelled.Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Dangers_are_issued_before_any_of_them()
    {
        var kinds = example.Result.Documents.Select(d => d.Document.Kind).ToList();
        Assert.True(kinds.IndexOf("due-label") > kinds.FindLastIndex(k => k is "quarantine-label" or "notice" or "report"));
    }

    [Fact]
    public async Task One_that_does_not_hold_its_text_is_held_back_and_said_and_the_report_is_issued()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01");
        // As long as an identity may be, and of the widest letter.
        var wide = new string('W', 80);
        record.Item("CON-01")["id"] = wide;
        record.Rows("examinations").Single()["item"] = wide;
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal("report", Assert.Single(result.Documents).Document.Kind);
        var refused = Assert.Single(result.Refused);
        Assert.Equal((wide, "PRN003", "next-examination label"), (refused.Item, Assert.Single(refused.Codes), refused.What.Text));
        Assert.Contains(
            $"PRN003: due-label of {wide}: no room for the whole of the identity; it is held back",
            Assert.Single(result.Unprintable),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_danger_that_does_not_fit_is_told_all_the_same_and_what_is_cut_is_said()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record.Item("CON-07")["description"] = string.Join(' ', Enumerable.Repeat("Endless", 400));
        var result = await workspace.IssueAsync(workspace.Write(record));

        Assert.Contains("quarantine-label", result.Documents.Select(d => d.Document.Kind), StringComparer.Ordinal);
        Assert.Contains(result.Unprintable, s =>
            s.StartsWith("PRN003: quarantine-label of CON-07: no room for the whole of the description", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task Words_too_small_for_the_distance_are_a_remark()
    {
        using var workspace = new Workspace();
        var request = workspace.Request(workspace.Write(Workspace.Example().Only("CON-07"))) with { Only = ["quarantine-label"] };
        var near = await IssueDocuments.RunAsync(request, TestContext.Current.CancellationToken);
        var far = await IssueDocuments.RunAsync(
            request with
            {
                Style = new PrintStyle { Reading = new(2.1m) },
            },
            TestContext.Current.CancellationToken
        );

        Assert.Empty(near.Remarks);
        Assert.StartsWith(
            "PRN004: quarantine-label of CON-07: its words are read from ",
            Assert.Single(far.Remarks, r => r.StartsWith("PRN004", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        Assert.Empty(far.Unprintable);
        Assert.Single(far.Documents);
    }

    [Fact]
    public async Task A_sheet_holds_the_kind_of_its_stock_and_says_what_it_leaves_out()
    {
        using var workspace = new Workspace();
        var record = workspace.Write(Workspace.Example().Only("CON-01", "CON-07"));
        var request = Request(workspace, record);
        var usual = await PrintLabels.RunAsync(request, TestContext.Current.CancellationToken);
        var due = await PrintLabels.RunAsync(
            request with
            {
                Stock = ReadLabelStock.From("a4-12"),
                CropMarks = true,
                BlackOnly = true,
            },
            TestContext.Current.CancellationToken
        );
        var again = await PrintLabels.RunAsync(
            request with
            {
                InputsOrNumbers = [due.Labels[0].Document.Number],
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal("CON-07", Assert.Single(Assert.Single(usual.Labels).Document.Items));
        Assert.Equal(["not on this stock: 1 of kind due-label; --only due-label prints them"], usual.Remarks, StringComparer.Ordinal);
        Assert.Equal("CON-01", Assert.Single(Assert.Single(due.Labels).Document.Items));
        Assert.Null(due.Refused);
        Assert.Equal((false, "due-label"), (Assert.Single(again.Labels).IssuedNow, again.Labels[0].Document.Kind));
        Assert.Empty(again.Remarks);
    }

    [Fact]
    public async Task A_stock_that_could_not_be_read_is_not_replaced_by_the_usual_one()
    {
        using var workspace = new Workspace();
        var request = Request(workspace, workspace.Write(Workspace.Example().Only("CON-07"))) with { Stock = ReadLabelStock.From("a4-99") };
        var result = await PrintLabels.RunAsync(request, TestContext.Current.CancellationToken);
        Assert.StartsWith("there is no stock 'a4-99'", result.Refused, StringComparison.Ordinal);
        Assert.False(File.Exists(workspace.Register));
    }

    [Fact]
    public async Task A_stock_for_another_kind_is_refused_before_anything_is_issued()
    {
        using var workspace = new Workspace();
        var request = Request(workspace, workspace.Write(Workspace.Example().Only("CON-01", "CON-07")));
        var stock = await PrintLabels.RunAsync(
            request with
            {
                Stock = ReadLabelStock.From("a4-2"),
                Kind = "due-label",
            },
            TestContext.Current.CancellationToken
        );
        var start = await PrintLabels.RunAsync(request with { Start = 3 }, TestContext.Current.CancellationToken);
        Assert.StartsWith("stock a4-2 is for quarantine-label; for due-label take a4-24", stock.Refused, StringComparison.Ordinal);
        Assert.Equal("a sheet of a4-2 has places 1 to 2", start.Refused);
        Assert.False(File.Exists(workspace.Register));

        var issued = await PrintLabels.RunAsync(request, TestContext.Current.CancellationToken);
        var number = Assert.Single(issued.Labels).Document.Number;
        var other = await PrintLabels.RunAsync(
            request with
            {
                InputsOrNumbers = [number],
                Kind = "due-label",
            },
            TestContext.Current.CancellationToken
        );
        Assert.StartsWith($"{number} is a quarantine-label, and stock a4-24 is for due-label", other.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Small_metal_gets_the_issued_label_in_its_size_by_record_and_by_its_scanned_code_and_what_has_no_room_is_named()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-01", "CON-02");
        record.Item("CON-02")["serial"] = "0123456789-0123456789-0123456789-0123456789";
        var request = Request(workspace, workspace.Write(record)) with
        {
            Stock = ReadLabelStock.From("wrap-25x10"),
            Browser = OpenBrowser.Instance,
        };
        var small = await PrintLabels.RunAsync(request, TestContext.Current.CancellationToken);

        var label = Assert.Single(small.Labels);
        Assert.Equal("CON-01", Assert.Single(label.Items));
        Assert.Contains(
            "of CON-02 is not on this sheet of wrap-25x10. PRN003: no room for the whole of the serial",
            Assert.Single(small.Unprintable),
            StringComparison.Ordinal
        );
        Assert.Equal((25, 10), SizeMm(request.OutFile));

        // The register keeps the label as issued, and the same one comes out of its number, or of its code.
        var again = await PrintLabels.RunAsync(
            request with
            {
                InputsOrNumbers = [$"{label.Number} CON-01\nExamine by 11 Nov 2026"],
                Stock = ReadLabelStock.From("tag-86x54"),
            },
            TestContext.Current.CancellationToken
        );
        Assert.Null(again.Refused);
        Assert.Empty(again.Unprintable);
        Assert.Equal((label.Number, false), (Assert.Single(again.Labels).Number, again.Labels[0].IssuedNow));
        Assert.Equal((86, 54), SizeMm(request.OutFile));

        var other = await PrintLabels.RunAsync(
            request with
            {
                InputsOrNumbers = [$"EXAMDOCS:{label.Number}:CON-05"],
            },
            TestContext.Current.CancellationToken
        );
        Assert.StartsWith(
            $"the code says {label.Number} of CON-05, and {label.Number} is about CON-01",
            other.Refused,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Tags_to_fill_in_by_hand_take_no_number_and_make_no_register()
    {
        using var workspace = new Workspace();
        var request = new HandTagRequest
        {
            Count = 3,
            OutFile = Path.Combine(workspace.Out, "tags.pdf"),
            Browser = OpenBrowser.Instance,
        };
        Assert.Null(await PrintHandTags.RunAsync(request, TestContext.Current.CancellationToken));
        Assert.Equal(2, PagesOf(request.OutFile));
        Assert.False(File.Exists(workspace.Register));
        Assert.Equal(
            "--by-hand takes a number from 1 to 500",
            await PrintHandTags.RunAsync(request with { Count = 0, OutFile = request.OutFile + "2" }, TestContext.Current.CancellationToken)
        );
        Assert.StartsWith(
            "stock wrap-25x10 is for due-label",
            await PrintHandTags.RunAsync(
                request with
                {
                    Stock = ReadLabelStock.From("wrap-25x10"),
                    OutFile = request.OutFile + "3",
                },
                TestContext.Current.CancellationToken
            ),
            StringComparison.Ordinal
        );
    }

    private static (int Width, int Height) SizeMm(string file)
    {
        using var pdf = PdfSharp.Pdf.IO.PdfReader.Open(file, PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        return ((int)Math.Round(pdf.Pages[0].Width.Millimeter), (int)Math.Round(pdf.Pages[0].Height.Millimeter));
    }

    private static int PagesOf(string file)
    {
        using var pdf = PdfSharp.Pdf.IO.PdfReader.Open(file, PdfSharp.Pdf.IO.PdfDocumentOpenMode.Import);
        return pdf.PageCount;
    }

    private static LabelRequest Request(Workspace workspace, string record) =>
        new()
        {
            InputsOrNumbers = [record],
            OutFile = Path.Combine(workspace.Out, "sheet.pdf"),
            Outputs = new() { Replace = true },
            RegisterPath = workspace.Register,
            Today = Workspace.Today,
        };
}
