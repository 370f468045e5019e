using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace ExamDocs.Benchmarks.Paired;

/// <summary>The parts of a run by themselves, with BenchmarkDotNet, each beside a peer on the same input; read the ratios.</summary>
internal static class PairedRun
{
    /// <param name="filters">Names with <c>*</c>; all where none is given.</param>
    public static void All(params string[] filters)
    {
        // In this process: a project that it would make and build for each would have to fetch packages.
        var config = ManualConfig
            .CreateEmpty()
            .AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance).WithIterationCount(7))
            .AddLogger(ConsoleLogger.Default)
            .AddColumnProvider(DefaultColumnProviders.Instance)
            .AddDiagnoser(MemoryDiagnoser.Default)
            .AddLogicalGroupRules(BenchmarkLogicalGroupRule.ByCategory)
            .WithArtifactsPath(Path.Combine(AppContext.BaseDirectory, "BenchmarkDotNet.Artifacts"));
        BenchmarkSwitcher
            .FromTypes([typeof(Checking), typeof(Reading), typeof(Printing)])
            .Run(["--filter", .. filters is [] ? ["*"] : filters], config);
    }
}
