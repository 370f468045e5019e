using ExamDocs.UseCases.Registered;
using ExamDocs.Workbench.Desk;
using NodaTime;

namespace ExamDocs.Workbench.Tests.Desk;

/// <summary>What somebody says of themselves is what is printed, no more.</summary>
public sealed class WhoTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("who-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_firm_that_is_taken_back_is_not_printed()
    {
        var who = new Who(
            new WorkbenchRequest
            {
                Register = new RegisterPlace(Path.Combine(_folder.FullName, "kit.db"), null),
                DataFolder = _folder.FullName,
                Today = () => OpenedWorkbench.Today,
            }
        );
        Assert.Empty(who.Keep(new Particulars("Ada Fenn", Firm: "Alder & Ash Examiners")));
        Assert.NotNull(who.Style(default(Instant)).Letterhead);
        Assert.Empty(who.Keep(new Particulars("Ada Fenn")));
        Assert.Null(who.Style(default(Instant)).Letterhead);
    }
}
