using System.Text.Json.Nodes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using SkiaSharp;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>Photos are printed where what they show is told, each of its own record, as pdfimages and pdftotext (poppler) see it.</summary>
public sealed class PhotosInPrintTests
{
    [Fact]
    public async Task A_photo_stands_in_the_report_and_that_of_a_danger_in_the_notice_too()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        var examination = record.ExaminationOf("CON-07");
        examination.Observation("cracks")["photo"] = "crack.png";
        examination.Rows("observations").First(o => (string?)o["state"] == "clear")["photo"] = "other.png";
        Draw(workspace, "crack.png", SKColors.Red);
        Draw(workspace, "other.png", SKColors.Blue);

        var issued = await workspace.IssueAsync(workspace.Write(record));

        Assert.Equal(2, Images(workspace, issued, "report"));
        Assert.Equal(1, Images(workspace, issued, "notice"));
        Assert.Contains("Photo 1, Cracks, defect:", Text(workspace, issued, "report"), StringComparison.Ordinal);
        Assert.Contains("Photo 1, Cracks, defect:", Text(workspace, issued, "notice"), StringComparison.Ordinal);
        Assert.Contains("Photo 2,", Text(workspace, issued, "report"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_picture_under_the_same_name_makes_another_document()
    {
        using var workspace = new Workspace();
        var record = Workspace.Example().Only("CON-07");
        record.ExaminationOf("CON-07").Observation("cracks")["photo"] = "crack.png";
        var input = workspace.Write(record);
        Draw(workspace, "crack.png", SKColors.Red);
        await workspace.IssueAsync(input);
        Draw(workspace, "crack.png", SKColors.Blue);

        var again = await workspace.IssueAsync(input);

        Assert.True(again.Documents.Single(d => d.Document.Kind == "notice").IssuedNow);
        Assert.False(again.Documents.Single(d => d.Document.Kind == "quarantine-label").IssuedNow);
    }

    [Fact]
    public async Task Inputs_decided_together_keep_each_their_own_pictures_of_one_name()
    {
        using var workspace = new Workspace();
        List<string> inputs = [];
        foreach (
            var (folder, item, criterion, colour) in new[]
            {
                ("one", "CON-07", "cracks", SKColors.Red),
                ("two", "HAR-04", "stitching", SKColors.Blue),
            }
        )
        {
            var record = Workspace.Example().Only(item);
            record.ExaminationOf(item).Observation(criterion)["photo"] = "1.png";
            Directory.CreateDirectory(Path.Combine(workspace.Folder, folder));
            Draw(workspace, Path.Combine(folder, "1.png"), colour);
            inputs.Add(workspace.Write(record, Path.Combine(folder, "visit.json")));
        }

        var issued = await workspace.IssueAsync([.. inputs]);

        Assert.Single(issued.Inputs);
        Assert.Equal(
            [SKColors.Red, SKColors.Blue],
            new[] { "CON-07", "HAR-04" }.Select(id =>
                Colour(workspace.FileOf(issued.Documents.Single(d => d.Document.Kind == "notice" && d.Document.Items.Contains(id))))
            )
        );
    }

    [Fact]
    public async Task The_letterhead_stands_on_paper_with_its_foot_as_typed()
    {
        using var workspace = new Workspace();
        Draw(workspace, "logo.png", SKColors.DarkBlue);
        var letterhead = Letterhead(
            workspace,
            new JsonObject
            {
                ["name"] = "Alder & Ash Examiners",
                ["address"] = "2 Saw Pit Lane, Quernford",
                ["logo"] = "logo.png",
                ["colour"] = "#1f3b57",
                ["footer"] = """a "quoted" \61 foot; } <b> ü""",
            }
        );
        Assert.Empty(letterhead.Faults);

        var issued = await IssueDocuments.RunAsync(
            workspace.Request(workspace.Write(Workspace.Example().Only("CON-07"))) with
            {
                Style = new PrintStyle { Letterhead = letterhead.Letterhead },
            },
            TestContext.Current.CancellationToken
        );

        foreach (var kind in new[] { "report", "notice" })
        {
            Assert.Contains("Alder & Ash Examiners 2 Saw Pit Lane, Quernford", Text(workspace, issued, kind), StringComparison.Ordinal);
            Assert.Contains("""a "quoted" \61 foot; } <b> ü""", Text(workspace, issued, kind), StringComparison.Ordinal);
            Assert.Equal(1, Images(workspace, issued, kind));
        }
    }

    [Theory]
    [InlineData("""{"address":"x"}""", "name")]
    [InlineData("""{"name":"x","colour":"#ffcc00"}""", "4.5")]
    [InlineData("""{"name":"x","colour":"red; background: url(x)"}""", "#1f3b57")]
    [InlineData("""{"name":"x","logo":"logo.svg"}""", "logo")]
    [InlineData("""{"name":"x","logo":"../logo.png"}""", "logo")]
    [InlineData("""{"name":"x","logo":"small.png"}""", "200 pixels")]
    [InlineData("""{"name":"x","logo":"absent.png"}""", "absent.png")]
    [InlineData("""{"name":"x\u202e"}""", "name")]
    [InlineData("""{"name":"x","footer":"a\nb"}""", "one line")]
    [InlineData("""{"name":"x","slogan":"y"}""", "no such member")]
    [InlineData("""{"name":""", "not valid JSON")]
    public void A_letterhead_that_would_print_badly_is_refused_at_its_place(string json, string said)
    {
        using var workspace = new Workspace();
        Draw(workspace, "small.png", SKColors.Black, 40);
        File.WriteAllText(Path.Combine(workspace.Folder, "logo.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\"/>");
        File.WriteAllText(Path.Combine(workspace.Folder, "head.json"), json);

        var read = ReadLetterhead.From(Path.Combine(workspace.Folder, "head.json"));

        Assert.Null(read.Letterhead);
        Assert.Contains(said, string.Join('\n', read.Faults), StringComparison.Ordinal);
    }

    private static LetterheadRead Letterhead(Workspace workspace, JsonObject json)
    {
        var path = Path.Combine(workspace.Folder, "head.json");
        File.WriteAllText(path, json.ToJsonString());
        return ReadLetterhead.From(path);
    }

    private static void Draw(Workspace workspace, string name, SKColor colour, int side = 300)
    {
        using var bitmap = new SKBitmap(side, side);
        bitmap.Erase(colour);
        using var png = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        File.WriteAllBytes(Path.Combine(workspace.Folder, name), png.ToArray());
    }

    private static string FileOf(Workspace workspace, IssueResult issued, string kind) =>
        workspace.FileOf(issued.Documents.Single(d => d.Document.Kind == kind && d.CopyOf is null));

    private static string Text(Workspace workspace, IssueResult issued, string kind) => Pdf.Text(FileOf(workspace, issued, kind));

    private static int Images(Workspace workspace, IssueResult issued, string kind) => Pdf.Images(FileOf(workspace, issued, kind)).Count;

    private static SKColor Colour(string file)
    {
        using var bitmap = SKBitmap.Decode(Assert.Single(Pdf.Images(file)));
        var middle = bitmap.GetPixel(bitmap.Width / 2, bitmap.Height / 2);
        return middle.Red > 200 ? SKColors.Red
            : middle.Blue > 200 ? SKColors.Blue
            : SKColors.Empty;
    }
}
