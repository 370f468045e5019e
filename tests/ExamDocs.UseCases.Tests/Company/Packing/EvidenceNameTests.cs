using ExamDocs.UseCases.Company.Packing;

namespace ExamDocs.UseCases.Tests.Company.Packing;

/// <summary>Names from elsewhere either lie in a folder as they are, or are refused in words that show nothing harmful.</summary>
public sealed class EvidenceNameTests
{
    [Theory]
    [InlineData("ex1.pdf")]
    [InlineData("Ada Fenn guild  certificate.PDF")]
    [InlineData("Zoë Ångström.jpeg")]
    [InlineData("H-1, declaration (2024).png")]
    public void A_plain_name_is_taken_and_is_the_name_of_the_file(string name)
    {
        Assert.Null(EvidenceName.Objection([name]));
        var folder = Directory.CreateTempSubdirectory("examdocs-evidence-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, name), "");
            Assert.Equal(name, Path.GetFileName(Assert.Single(Directory.GetFiles(folder))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("../x.pdf")]
    [InlineData("/etc/x.pdf")]
    [InlineData("C:\\x.pdf")]
    [InlineData("x.pdf:stream.pdf")]
    [InlineData("..pdf")]
    [InlineData(".hidden.pdf")]
    [InlineData("-rf.pdf")]
    [InlineData("NUL.pdf")]
    [InlineData("com1.tar.pdf")]
    [InlineData("line\nbreak.pdf")]
    [InlineData("null\0.pdf")]
    [InlineData("\u202Efdp.exe.pdf")]
    [InlineData("zero\u200Bwidth.pdf")]
    [InlineData("half \uD800.pdf")]
    [InlineData("x.pdf.")]
    [InlineData("x.exe")]
    [InlineData("x")]
    [InlineData("")]
    public void Any_other_is_refused_and_shown_without_what_could_mislead(string name)
    {
        var said = EvidenceName.Objection(["ex1.pdf", name])?.Text;
        Assert.NotNull(said);
        Assert.DoesNotContain(said, c => char.IsControl(c) || c is '\u202E' or '\u200B' or '\uD800');
    }

    [Fact]
    public void A_name_too_long_for_some_system_is_refused_and_shown_cut()
    {
        Assert.Null(EvidenceName.Objection([new string('a', 100) + ".pdf"]));
        var said = EvidenceName.Objection([new string('a', 5_000) + ".pdf"])!.Text;
        Assert.InRange(said.Length, 100, 300);
    }

    [Fact]
    public void Two_names_that_some_system_takes_for_one_are_refused() =>
        Assert.Equal("two files are called 'EX1.pdf': rename one of them", EvidenceName.Objection(["ex1.pdf", "EX1.pdf"])!.Text);
}
