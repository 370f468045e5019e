using ExamDocs.UseCases.Tests.SeededYears;

namespace ExamDocs.UseCases.Tests.Teaching;

/// <summary>The register of the invented firm after its three years, made once for all tests that read it.</summary>
public sealed class SeededRegister : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-");

    public SeededRegister() => SeededFirm.Import(1, At("visits"), Place);

    public string Place => At("years.db");

    public string At(string name) => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);
}
