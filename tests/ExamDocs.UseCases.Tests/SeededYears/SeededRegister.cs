using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.SeededYears;

[assembly: AssemblyFixture(typeof(SeededRegister))]

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>The register of the invented firm after its three years, made once for all tests that read it.</summary>
public sealed class SeededRegister : IDisposable
{
    private readonly Lock _making = new();
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-");
    private IReadOnlyList<CheckedInput>? _inputs;

    /// <summary>The register; made when it is first asked for.</summary>
    public string Place
    {
        get
        {
            _ = Inputs;
            return At("years.db");
        }
    }

    /// <summary>The same before the visits of the last round.</summary>
    public string PlaceBeforeLastRound
    {
        get
        {
            _ = Inputs;
            return At("before.db");
        }
    }

    /// <summary>What each visit was decided to.</summary>
    public IReadOnlyList<CheckedInput> Inputs
    {
        get
        {
            lock (_making)
                return _inputs ??= Make();
        }
    }

    public string At(string name) => Path.Combine(_folder.FullName, name);

    public void Dispose() => _folder.Delete(recursive: true);

    private List<CheckedInput> Make()
    {
        var (inputs, place) = (new List<CheckedInput>(), At("years.db"));
        // Each on the day after it, as the firm did.
        foreach (var (visit, file) in SeededFirm.Of(1).Zip(SeededFirm.Write(1, At("visits"))))
        {
            if (SeededFirm.IsOfLastRound(visit) && !File.Exists(At("before.db")))
                File.Copy(place, At("before.db"));
            inputs.AddRange(ImportVisits.Run([file], place, visit.Visit.ExaminedOn!.Value.PlusDays(1), KnownRules.BuiltIn).Inputs);
        }
        return inputs;
    }
}
