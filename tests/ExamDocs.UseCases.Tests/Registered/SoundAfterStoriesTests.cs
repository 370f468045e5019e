using ExamDocs.Core.Records;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.BetweenRecords;
using ExamDocs.UseCases.Tests.BetweenRecords.Stories;
using ExamDocs.UseCases.Tests.Issuing;
using NodaTime;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>
/// No false alarm: whatever story a register was told, deciding each of its records again with what it could know gives what is
/// stored; and so in two registers, each told every other part of it, once they are joined.
/// </summary>
public sealed class SoundAfterStoriesTests(ToldStories told) : IDisposable
{
    private static readonly LocalDate Today = ToldStories.Today;

    private readonly Workspace _workspace = new();

    public static TheoryData<string> Names => ToldStories.Names;

    /// <summary>One story in four; all with EXAMDOCS_PROOF=full.</summary>
    public static TheoryData<string> SomeNames => [.. Effort.OneIn(4, ToldStories.All.Keys)];

    public void Dispose() => _workspace.Dispose();

    [Theory]
    [MemberData(nameof(Names))]
    public void A_register_that_was_told_it_is_sound(string name) => AssertSound(told[name].Register);

    [Theory]
    [MemberData(nameof(SomeNames))]
    public void Two_registers_that_were_told_every_other_part_are_sound_once_joined(string name)
    {
        var (here, there) = (Path.Combine(_workspace.Folder, "here.db"), Path.Combine(_workspace.Folder, "there.db"));
        foreach (var place in new[] { here, there })
            DocumentRegister.Create(place, Today).Dispose();
        var story = ToldStories.All[name];
        foreach (var (n, run) in story.Runs.SkipLast(1).Index())
            Import(run, n % 2 == 0 ? here : there);
        MergeRegisters.Run(here, there, Today);
        MergeRegisters.Run(there, here, Today);
        foreach (var place in new[] { here, there })
        {
            AssertSound(place);
            var last = CheckAgainstRegister.All(ToldStories.Write(story.Runs[^1], _workspace.Folder), Today, null, place);
            foreach (
                var item in story
                    .Must.Where(m => m.Contains(" withdraw W10", StringComparison.Ordinal))
                    .Select(m => m[..m.IndexOf(" withdraw", StringComparison.Ordinal)])
            )
                Assert.All(last.SelectMany(i => i.Visit!.Items).Where(i => i.Item.Id == item), i =>
                    Assert.True(i.Outcome >= Outcome.Undetermined, $"{item} is {i.Outcome} where the registers were joined")
                );
        }
    }

    private static void AssertSound(string place)
    {
        using var register = DocumentRegister.OpenToRead(place, Today);
        var found = CheckRegister.Run(register, [], KnownRules.BuiltIn);
        Assert.Empty(found.Faults);
        Assert.Empty(found.Notes);
    }

    private void Import(StoryVisit[] run, string place) =>
        ImportVisits.Run(ToldStories.Write(run, _workspace.Folder), place, Today, KnownRules.BuiltIn);
}
