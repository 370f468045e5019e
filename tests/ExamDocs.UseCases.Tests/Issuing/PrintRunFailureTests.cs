using ExamDocs.Register;
using ExamDocs.Templates.Label;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>What stops a run is said as every command says it; what is wrong with the register itself stops the command.</summary>
public sealed class PrintRunFailureTests : IDisposable
{
    private readonly Workspace _workspace = new();

    public void Dispose() => _workspace.Dispose();

    [Fact]
    public async Task A_full_disk_says_to_make_room() =>
        Assert.Equal(
            "No space left on device : '/out'; make room, then run the command again to go on",
            await RunAsync(new IOException("No space left on device : '/out'", 28))
        );

    [Fact]
    public async Task Only_the_first_line_is_said() =>
        Assert.Equal("It is refused.", await RunAsync(new IOException("It is refused.\nSTATEMENT: INSERT INTO document")));

    [Fact]
    public async Task A_register_that_does_not_hold_what_it_should_is_not_a_failure_to_try_again() =>
        await Assert.ThrowsAsync<InvalidDataException>(() => RunAsync(new InvalidDataException("The register no longer holds it.")));

    private async Task<string?> RunAsync(Exception failure)
    {
        using var register = DocumentRegister.Open(_workspace.Register);
        await using var prints = new PrintRun(register, new Corrections(register, reason: null), _workspace.Out, Workspace.Today);
        var visit = CheckRecord.Of(Workspace.ExampleJson, Workspace.Today).Visit!;
        var job = ComposeDocuments.Of(visit, perItem: false, ReadingDistance.Default).Jobs[0] with { Compose = (_, _) => throw failure };
        return await prints.RunAsync([job], TestContext.Current.CancellationToken);
    }
}
