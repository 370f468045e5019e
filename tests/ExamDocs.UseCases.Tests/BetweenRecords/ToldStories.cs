using System.Collections.Concurrent;
using ExamDocs.Core.Regimes;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.BetweenRecords;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using NodaTime;

[assembly: AssemblyFixture(typeof(ToldStories))]

namespace ExamDocs.UseCases.Tests.BetweenRecords;

/// <summary>A story that a register of its own was told.</summary>
/// <param name="Register">The register, which knows all of it; only to be read.</param>
/// <param name="Checked">The last run, checked while the register knew the runs before.</param>
/// <param name="Imported">The last run, as its import decided it.</param>
public sealed record ToldStory(string Register, IReadOnlyList<CheckedInput> Checked, IReadOnlyList<CheckedInput> Imported);

/// <summary>Every story told to a register once, run by run, for all tests that look at what came of it.</summary>
public sealed class ToldStories : IDisposable
{
    internal static readonly LocalDate Today = new(2027, 12, 31);

    internal static readonly IReadOnlyDictionary<string, Story> All = IdentityStories
        .All.Concat(AssemblyStories.All)
        .Concat(EndingStories.All)
        .Concat(AsideStories.All)
        .Concat(CorrectedAwayStories.All)
        .ToDictionary(story => story.Name, StringComparer.Ordinal);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-");
    private readonly ConcurrentDictionary<string, Lazy<ToldStory>> _told = new(StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. All.Keys];

    public ToldStory this[string name] => _told.GetOrAdd(name, n => new Lazy<ToldStory>(() => Tell(All[n]))).Value;

    public void Dispose() => _folder.Delete(recursive: true);

    internal static string[] Write(IEnumerable<StoryVisit> visits, string folder) =>
        [
            .. visits.Select(visit =>
            {
                var path = Path.Combine(folder, $"visit-{Guid.NewGuid():N}.json");
                File.WriteAllText(path, visit.Json);
                return path;
            }),
        ];

    private ToldStory Tell(Story story)
    {
        var folder = Directory.CreateDirectory(Path.Combine(_folder.FullName, Guid.NewGuid().ToString("N"))).FullName;
        var register = Path.Combine(folder, "register.db");
        foreach (var run in story.Runs.SkipLast(1))
            ImportVisits.Run(Write(run, folder), register, Today, KnownRules.BuiltIn);
        var last = Write(story.Runs[^1], folder);
        var found = story.Runs.Count == 1 ? CheckRecord.All(last, Today) : CheckAgainstRegister.All(last, Today, null, register);
        return new(register, found, ImportVisits.Run(last, register, Today, KnownRules.BuiltIn).Inputs);
    }
}
