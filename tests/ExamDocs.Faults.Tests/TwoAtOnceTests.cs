using ExamDocs.Cli.Tests;
using ExamDocs.Proof.Tests;

namespace ExamDocs.Faults.Tests;

/// <summary>Two runs issue into one register and one folder at the same time.</summary>
public sealed class TwoAtOnceTests : IDisposable
{
    private readonly Examdocs _examdocs = new(apart: true);

    [Fact]
    public async Task Each_gets_its_documents_and_no_number_is_lost_or_given_twice()
    {
        var each = Effort.Of(12, 500);
        var names = new[] { "A", "B" };
        var runs = await Task.WhenAll(
            names.Select(name =>
                _examdocs.RunAsync(["issue", Kit.Withdrawn(name, each).Write(_examdocs, $"{name}.json"), "--out", "out", .. Kit.OnlyLabels])
            )
        );

        Assert.All(runs, run => Assert.True(run.ExitCode == 0, run.Err));
        var issued = Aftermath.AssertSound(_examdocs.DefaultRegister, _examdocs.At("out"));
        Assert.Equal(2 * each, issued.Count);
        foreach (var (name, run) in names.Zip(runs))
        {
            var own = issued.Where(d => d.Items[0].StartsWith($"{name}-", StringComparison.Ordinal)).ToList();
            Assert.Equal(each, own.SelectMany(d => d.Items).Distinct(StringComparer.Ordinal).Count());
            Assert.All(own, d => Assert.Contains(d.Number, run.Out, StringComparison.Ordinal));
        }
    }

    public void Dispose() => _examdocs.Dispose();
}
