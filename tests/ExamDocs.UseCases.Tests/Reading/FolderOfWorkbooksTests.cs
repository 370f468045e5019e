using ExamDocs.UseCases.Reading;
using ExamDocs.UseCases.Tests.Issuing;

namespace ExamDocs.UseCases.Tests.Reading;

/// <summary>A folder of workbooks is so many inputs; one with anything else that may hold a record is explained.</summary>
public sealed class FolderOfWorkbooksTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("examdocs-folder");

    [Fact]
    public void Its_workbooks_are_the_inputs_by_their_names()
    {
        Put("b.xlsx", "a.XLSX", "~$a.xlsx", "photos/van.jpg", "readme.txt");

        Assert.Equal([At("a.XLSX"), At("b.xlsx")], FolderOfWorkbooks.InputsOf(_folder.FullName));
        Assert.Null(FolderOfWorkbooks.WhyNot(_folder.FullName));
    }

    [Fact]
    public void One_that_is_empty_is_an_input_too()
    {
        Put("b.xlsx");
        File.WriteAllBytes(At("a.xlsx"), []);

        Assert.Equal([At("a.xlsx"), At("b.xlsx")], FolderOfWorkbooks.InputsOf(_folder.FullName));
    }

    [Theory]
    [InlineData("old.pdf")]
    [InlineData("visit.json")]
    [InlineData("kit.ods")]
    [InlineData("below/c.xlsx")]
    public void With_something_else_that_may_hold_a_record_it_is_refused_and_explained(string other)
    {
        Put("a.xlsx", "b.xlsx", other);

        Assert.Equal([_folder.FullName], FolderOfWorkbooks.InputsOf(_folder.FullName));
        var said = ReadInput.From(_folder.FullName).Unreadable;
        Assert.StartsWith("there are 2 workbooks in the folder", said, StringComparison.Ordinal);
        Assert.Contains(other, said, StringComparison.Ordinal);
    }

    [Fact]
    public void With_separated_values_it_is_one_record_and_a_workbook_in_it_is_an_error()
    {
        Put("a.xlsx");
        File.WriteAllText(At("People.csv"), "id,name\nex1,Ida Brackenfold\n");

        Assert.Equal([_folder.FullName], FolderOfWorkbooks.InputsOf(_folder.FullName));
        Assert.Contains(ReadInput.From(_folder.FullName).Findings, f => f.Code is "INT072");
    }

    [Fact]
    public void Any_other_input_stays_as_it_is() => Assert.Equal(["none.xlsx"], FolderOfWorkbooks.InputsOf("none.xlsx"));

    public void Dispose() => _folder.Delete(recursive: true);

    private void Put(params string[] names)
    {
        foreach (var name in names)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(At(name))!);
            if (name.StartsWith('~'))
                File.WriteAllText(At(name), "lock");
            else if (name.EndsWith(".jpg", StringComparison.Ordinal) || name.EndsWith(".txt", StringComparison.Ordinal))
                File.WriteAllText(At(name), "no record");
            else
                File.Copy(Workspace.ExampleWorkbook, At(name));
        }
    }

    private string At(string name) => Path.Combine(_folder.FullName, name);
}
