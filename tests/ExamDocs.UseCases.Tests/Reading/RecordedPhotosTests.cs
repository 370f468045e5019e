using System.Text.Json.Nodes;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;
using SkiaSharp;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>Photos are looked for beside the record's file, and what is wrong with one changes no outcome.</summary>
public sealed class RecordedPhotosTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-photos-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_photo_that_is_missing_or_elsewhere_is_a_warning_at_its_place()
    {
        var record = JsonNode.Parse(File.ReadAllText(Workspace.ExampleJson))!.AsObject();
        string[] photos = ["photos/good.png", "photos/missing.jpg", "../good.png", "record.json"];
        var examined = record.Rows("examinations").Take(photos.Length).ToList();
        foreach (var (examination, photo) in examined.Zip(photos))
            examination.Rows("observations").First()["photo"] = photo;
        var file = Path.Combine(_folder.FullName, "record.json");
        File.WriteAllText(file, record.ToJsonString());
        Directory.CreateDirectory(Path.Combine(_folder.FullName, "photos"));
        using (var bitmap = new SKBitmap(8, 8))
        using (var png = bitmap.Encode(SKEncodedImageFormat.Png, 100))
            File.WriteAllBytes(Path.Combine(_folder.FullName, "photos", "good.png"), png.ToArray());

        var read = CheckRecord.Of(file, Workspace.Today);

        var found = read.Visit!.Findings.Where(f => f.Code is "INT042" or "INT043" or "INT044" or "INT045").ToList();
        Assert.Equal(
            [
                ("INT042", $"{file}#/examinations/1/observations/0/photo"),
                ("INT043", $"{file}#/examinations/2/observations/0/photo"),
                ("INT044", $"{file}#/examinations/3/observations/0/photo"),
            ],
            found.Select(f => (f.Code, read.Sources.Locate(f.Path)))
        );
        Assert.All(found, f => Assert.Equal(Severity.Warning, f.Severity));
        Assert.Equal(examined[1..].Select(e => (string?)e["item"]), found.Select(f => f.Item));
        Assert.Equal(Outcomes(CheckRecord.Of(Workspace.ExampleJson, Workspace.Today)), Outcomes(read));
    }

    [Fact]
    public void Two_copies_of_a_record_whose_photo_is_missing_are_no_contradiction()
    {
        var record = JsonNode.Parse(File.ReadAllText(Workspace.ExampleJson))!.AsObject();
        record.Rows("examinations").First().Rows("observations").First()["photo"] = "missing.jpg";
        List<string> files = [.. Enumerable.Range(1, 2).Select(n => Path.Combine(_folder.FullName, $"{n}.json"))];
        files.ForEach(file => File.WriteAllText(file, record.ToJsonString()));

        var read = Assert.Single(CheckRecord.All(files, Workspace.Today));

        Assert.Contains(read.Visit!.Findings, f => f is { Code: "INT042", Path: "/examinations/0/observations/0/photo" });
        Assert.Contains(read.Visit.Findings, f => f.Code is "INT050");
        Assert.DoesNotContain(read.Visit.Findings, f =>
            f is { Code: "INT051", Path: var path } && path.StartsWith("/examinations/0", StringComparison.Ordinal)
        );
    }

    private static IEnumerable<(string?, Outcome, string)> Outcomes(CheckedInput input) =>
        input.Visit!.Items.Select(i => (i.Item.Id, i.Outcome, string.Join(' ', i.Reasons.Select(r => r.Code))));
}
