using ExamDocs.UseCases.Outputs;

namespace ExamDocs.UseCases.Tests.Outputs;

/// <summary>What turns up while the work is done is not overwritten either; who can name what is tried on the command line.</summary>
public sealed class OutputGuardTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("examdocs-guard-").FullName;

    private string At(string name) => Path.Combine(_folder, name);

    /// <summary>An open file of the process leads to a file that somebody has; only its own output and errors are streams.</summary>
    [Theory]
    [InlineData("/proc/self/fd/")]
    [InlineData("/dev/fd/")]
    public void A_file_that_is_open_already_is_no_device(string folder)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "There are no such paths here.");
        var file = At("open.txt");
        File.WriteAllText(file, "mine");
        using var open = new FileStream(file, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        var path = folder + open.SafeFileHandle.DangerousGetHandle().ToString(System.Globalization.CultureInfo.InvariantCulture);

        Assert.Throws<OutputRefusedException>(() => OutputGuard.NewFilesOnly.Require(path));
        Assert.ThrowsAny<Exception>(() => OutputGuard.NewFilesOnly.Write(path, "ours"u8.ToArray()));
        Assert.Equal("mine", new StreamReader(open).ReadToEnd());
    }

    [Fact]
    public void What_turns_up_after_the_first_look_stays()
    {
        var guard = OutputGuard.NewFilesOnly;
        guard.Require(At("f.json"));
        File.WriteAllText(At("f.json"), "somebody else's");

        var refused = Assert.Throws<OutputRefusedException>(() => guard.Write(At("f.json"), "ours"u8.ToArray()));
        Assert.Equal($"{At("f.json")} is there already: name another file, or add --replace", refused.Message);
        Assert.Equal("somebody else's", File.ReadAllText(At("f.json")));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_turns_up_in_the_moment_of_writing_stays(bool replace)
    {
        var guard = new OutputGuard { Replace = replace };
        Assert.Throws<OutputRefusedException>(() => guard.Write(At("f.json"), path =>
            {
                File.WriteAllText(path, "ours");
                File.WriteAllText(At("f.json"), "somebody else's");
            }));
        Assert.Equal("somebody else's", File.ReadAllText(At("f.json")));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public void An_input_that_turns_up_is_one()
    {
        var guard = new OutputGuard { Replace = true }.For([At("visit.json")], register: null);
        guard.Require(At("f.json"));
        File.WriteAllText(At("visit.json"), "{}");
        File.CreateSymbolicLink(At("f.json"), At("visit.json"));
        Assert.Contains(
            "is an input of this run",
            Assert.Throws<OutputRefusedException>(() => guard.Write(At("f.json"), "ours"u8.ToArray())).Message,
            StringComparison.Ordinal
        );
        Assert.Equal("{}", File.ReadAllText(At("visit.json")));
    }

    /// <summary>Reading a pipe would wait until somebody writes to it.</summary>
    [Fact]
    public async Task A_pipe_is_refused_at_once()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There are no named pipes in folders here.");
        using (var made = System.Diagnostics.Process.Start("mkfifo", [At("pipe")]))
            await made.WaitForExitAsync(TestContext.Current.CancellationToken);
        var refused = await Task.Run(
                () => Assert.Throws<OutputRefusedException>(() => OutputGuard.NewFilesOnly.Require(At("pipe"))),
                TestContext.Current.CancellationToken
            )
            .WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
        Assert.Contains("is there already", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>The usual register may not be there yet.</summary>
    [Fact]
    public void The_name_of_the_register_is_not_given_away_before_it_is_made() =>
        Assert.Contains(
            "is the register in use",
            Assert
                .Throws<OutputRefusedException>(() =>
                    new OutputGuard { RegisterPath = At("examdocs.db") }.Require(Path.Combine(_folder, ".", "examdocs.db"))
                )
                .Message,
            StringComparison.Ordinal
        );

    /// <summary>The database would take such a file for its own, and the register with it would be another one.</summary>
    [Theory]
    [InlineData("-wal")]
    [InlineData("-shm")]
    [InlineData("-journal")]
    public void What_the_database_keeps_beside_a_register_is_no_output_even_where_it_is_not_there(string suffix)
    {
        var refused = Assert.Throws<OutputRefusedException>(() =>
            new OutputGuard { Replace = true, RegisterPath = At("reg.db") }.Require(At($"reg.db{suffix}"))
        );
        Assert.Contains("belongs to the register beside it", refused.Message, StringComparison.Ordinal);
        using (ExamDocs.Register.DocumentRegister.Open(At("other.db"), new NodaTime.LocalDate(2026, 6, 3))) { }
        Assert.Throws<OutputRefusedException>(() => OutputGuard.NewFilesOnly.Require(At($"other.db{suffix}")));
        OutputGuard.NewFilesOnly.Require(At($"no-register.db{suffix}"));
    }

    /// <summary>What a record or a letterhead names is read by the run, though no option names it.</summary>
    [Theory]
    [InlineData(new byte[] { 0xFF, 0xD8, 0xFF, 0xE1, 0 })]
    [InlineData(new byte[] { 0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A })]
    public void A_picture_is_never_replaced(byte[] picture)
    {
        File.WriteAllBytes(At("014-1.json"), picture);
        var guard = new OutputGuard { Replace = true };
        Assert.Contains(
            "is a picture",
            Assert.Throws<OutputRefusedException>(() => guard.Write(At("014-1.json"), "{}"u8.ToArray())).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(picture, File.ReadAllBytes(At("014-1.json")));
    }

    [Fact]
    public void A_folder_that_is_missing_is_made_with_the_file_and_not_before()
    {
        var file = Path.Combine(_folder, "reports", "may", "f.json");
        OutputGuard.NewFilesOnly.Require(file);
        Assert.False(Directory.Exists(At("reports")));
        OutputGuard.NewFilesOnly.Write(file, "ours"u8.ToArray());
        Assert.Equal("ours", File.ReadAllText(file));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
