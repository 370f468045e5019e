using ExamDocs.Templates.AuditPack;
using ExamDocs.UseCases.Company.Packing;

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
    public void By_examiner_item_or_model(string file, PackEvidenceKind kind, string about)
    {
        File.Delete(Path.Combine(_story.Evidence, "Model harness declaration.pdf"));
        _story.Enclose(file);
        var found = _story.Gather().Contents.Evidence.Single(e => e.Name == file);
        Assert.Equal((kind, about), (found.Kind, string.Join(", ", found.About)));
    }
}
