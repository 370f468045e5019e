using ExamDocs.Documents.Rendering;
using ExamDocs.Register;
using ExamDocs.Templates;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.UseCases.Tests.Issuing;

/// <summary>A page that says something else than its document is held back; a danger is told all the same.</summary>
public sealed class FaithfulPrintTests(ExampleIssued example)
{
    private const string Cut =
        "<!DOCTYPE html><html lang='en'><title>t</title><p>Serial</p><div "
        + "style='width:20mm;overflow:hidden;white-space:nowrap'>SN-100234-AB-77-C</div></html>";

    [Fact]
    public async Task A_report_that_is_cut_is_held_back_and_its_number_void()
    {
        using var workspace = new Workspace();
        var (prints, register) = await RunAsync(workspace, DocumentTypes.Report);
        using (register)
        {
            Assert.Empty(prints.Documents);
            Assert.Equal(["PRN002"], Assert.Single(prints.Refused).Codes);
            Assert.Contains("cut off on page 1", Assert.Single(prints.Unprintable), StringComparison.Ordinal);
            Assert.Contains("PRN002", Assert.Single(register.Voided()).Reason, StringComparison.Ordinal);
            Assert.Empty(Directory.EnumerateFiles(workspace.Out, "*.pdf"));
        }
    }

    [Fact]
    public async Task A_notice_that_is_cut_is_printed_and_the_fault_said()
    {
        using var workspace = new Workspace();
        var (prints, register) = await RunAsync(workspace, DocumentTypes.Notice);
        using (register)
        {
            Assert.Single(prints.Documents);
            Assert.Empty(prints.Refused);
            Assert.Contains("it is printed all the same", Assert.Single(prints.Unprintable), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Nothing_of_the_example_is_unfaithful()
    {
        Assert.Empty(example.Result.Unprintable);
        Assert.Empty(example.PerItem.Unprintable);
    }

    private async Task<(PrintRun Prints, DocumentRegister Register)> RunAsync(Workspace workspace, DocumentType type)
    {
        Directory.CreateDirectory(workspace.Out);
        var register = DocumentRegister.Open(workspace.Register);
        await using var prints = new PrintRun(register, new Corrections(register, reason: null), workspace.Out, Workspace.Today);
        var job = new DocumentJob(type, example.Visit, [example.Visit.Items[0]], Render);
        Assert.Null(await prints.RunAsync([job], TestContext.Current.CancellationToken));
        return (prints, register);
    }

    private static Task<string> Render(DocumentRenderer renderer, DocumentIdentity identity) => Task.FromResult(Cut);
}
