using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using NodaTime;

namespace ExamDocs.Proof.Tests.Histories;

/// <summary>The programme, with a register: every run is imported.</summary>
/// <param name="register">A file or an address.</param>
/// <param name="folder">For the records' files.</param>
internal sealed class Imported(string register, string folder) : IHistoryRunner
{
    private int _files;

    public IReadOnlyList<IReadOnlyList<Said>> Run(Run run)
    {
        var paths = run.Records.Select(Write).ToList();
        var inputs = ImportVisits
            .Run(paths, register, new LocalDate(run.LookedAtOn.Year, run.LookedAtOn.Month, run.LookedAtOn.Day), KnownRules.BuiltIn)
            .Inputs.ToDictionary(input => input.File, StringComparer.Ordinal);
        return [.. paths.Select(path => inputs[path].Visit!.Items.Select(FromProgramme.Said).ToList())];
    }

    public void Dispose()
    {
        foreach (var number in Enumerable.Range(1, _files))
        {
            File.Delete(PathOf(number));
        }
    }

    private string Write(string json)
    {
        var path = PathOf(++_files);
        File.WriteAllText(path, json);
        return path;
    }

    private string PathOf(int number) => Path.Combine(folder, FormattableString.Invariant($"record-{number}.json"));
}
