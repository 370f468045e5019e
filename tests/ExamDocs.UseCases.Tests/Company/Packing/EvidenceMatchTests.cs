using System.Text.Json.Nodes;
using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Company.Packing;
using static ExamDocs.UseCases.Tests.BetweenRecords.Stories.Story;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>A file is about what its name begins with.</summary>
public sealed class EvidenceMatchTests : IDisposable
{
    private readonly PackStory _story = new PackStory().InOrder();

    public void Dispose() => _story.Dispose();

    [Theory]
    [InlineData("ex1.pdf", PackEvidenceKind.Competence, "Ada Fenn")]
    [InlineData("EX1_certificate 2026.pdf", PackEvidenceKind.Competence, "Ada Fenn")]
    [InlineData("Ada-Fenn guild.jpg", PackEvidenceKind.Competence, "Ada Fenn")]
    [InlineData("h-1.pdf", PackEvidenceKind.Equipment, "H-1")]
    [InlineData("Fennick Works Model harness rev 3.pdf", PackEvidenceKind.Equipment, "H-1")]
    [InlineData("model rope-bridge.pdf", PackEvidenceKind.Equipment, "RB-1")]
    [InlineData("ex12.pdf", PackEvidenceKind.Other, "")]
    [InlineData("H-12 declaration.pdf", PackEvidenceKind.Other, "")]
    [InlineData("about ex1.pdf", PackEvidenceKind.Other, "")]
    [InlineData("ex1-certificate.pdf", PackEvidenceKind.Competence, "Ada Fenn")]
    [InlineData("Ada Fenn (guild).pdf", PackEvidenceKind.Competence, "Ada Fenn")]
    [InlineData("Ada Fenn-Holt guild.pdf", PackEvidenceKind.Other, "")]
    [InlineData("Ada Fenn\u2019Holt guild.pdf", PackEvidenceKind.Other, "")]
    [InlineData("Ada Fe\u0301nn guild.pdf", PackEvidenceKind.Other, "")]
    [InlineData("Ada Fenn\u0301 guild.pdf", PackEvidenceKind.Other, "")]
    [InlineData("ex1\u200B2.pdf", PackEvidenceKind.Other, "")]
    [InlineData("\u0415x1.pdf", PackEvidenceKind.Other, "")]
    [InlineData("H-1-A declaration.pdf", PackEvidenceKind.Other, "")]
    [InlineData("H-1.2 declaration.pdf", PackEvidenceKind.Other, "")]
    public void By_examiner_item_or_model(string file, PackEvidenceKind kind, string about)
    {
        File.Delete(Path.Combine(_story.Evidence, "Model harness declaration.pdf"));
        var found = Found(file);
        Assert.Equal((kind, about), (found.Kind, string.Join(", ", found.About)));
    }

    /// <summary>Kit of somebody else, and an examiner of theirs: their papers are evidence of nobody here.</summary>
    [Theory]
    [InlineData("H-1 left declaration.pdf")]
    [InlineData("Model harness deluxe.pdf")]
    [InlineData("Ada Fenn Holt certificate.pdf")]
    public void A_longer_name_of_something_that_is_not_in_the_pack_counts_first(string file)
    {
        var others = JsonNode.Parse(Visit("V-9", "2026-05-12", "Birch Lane Ltd").Harness("H-1 left", "Z9").By("Ada Fenn Holt").Json)!;
        others["items"]![0]!["model"] = "Model harness deluxe";
        _story.ImportJson(others.ToJsonString(), "2026-05-12");
        Assert.Equal(PackEvidenceKind.Other, KindOf(file));
    }

    /// <summary>What two makers call alike, what two things bear, and ids that differ in nothing that a file's name shows.</summary>
    [Fact]
    public void What_could_mean_several_tells_none()
    {
        var other = JsonNode.Parse(
            Visit("V-2", "2026-05-20").Harness("H-2", "A2", i => i.Maker("Tarnholm Gear")).Harness("h 1", "A9").By("Bo Larch").Json
        )!;
        other["people"]![0]!["id"] = "EX-1";
        foreach (var examination in other["examinations"]!.AsArray())
            examination!["examiner"] = "EX-1";
        _story.ImportJson(other.ToJsonString(), "2026-05-20");
        var third = JsonNode.Parse(Visit("V-3", "2026-05-21").Harness("H-3", "A3").By("Cy Moss").Json)!;
        third["people"]![0]!["id"] = "ex 1";
        third["examinations"]![0]!["examiner"] = "ex 1";
        _story.ImportJson(third.ToJsonString(), "2026-05-21");
        Assert.Equal(PackEvidenceKind.Other, KindOf("ex-1.pdf"));
        Assert.Equal(PackEvidenceKind.Other, KindOf("H-1.pdf"));
        Assert.Equal(PackEvidenceKind.Other, KindOf("Model harness.pdf"));
        Assert.Equal(PackEvidenceKind.Equipment, KindOf("Fennick Works Model harness.pdf"));
    }

    private PackEvidenceKind KindOf(string file) => Found(file).Kind;

    private PackEvidence Found(string file)
    {
        _story.Enclose(file);
        var sum = EvidenceFile.Hash(PackStory.Page(file));
        return _story.Gather().Contents.Evidence.First(e => e.Sha256 == sum);
    }
}
