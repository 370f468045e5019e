using System.Text;

namespace ExamDocs.Register.Tests;

/// <summary>A folder of its own for one test, with a register and a place for documents; gone afterwards.</summary>
public abstract class Workplace : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("examdocs-register-");

    internal string Database => Path.Combine(_root.FullName, "kit.db");

    internal string Out => Path.Combine(_root.FullName, "out");

    internal string Root => _root.FullName;

    internal DocumentRegister Open() => DocumentRegister.Open(Database);

    internal PendingDocument Take(DocumentRegister register, string job, char letter = 'R', int year = 2026) =>
        register.Take(new DocumentRequest(letter, year, "report", job, ["HB-014", "HB-014-B"], Out));

    internal IssuedDocument Issue(DocumentRegister register, string job, char letter = 'R', int year = 2026) =>
        register.Publish(Take(register, job, letter, year), Pdf(job), 2, """{"HB-014":"fit"}""");

    internal static byte[] Pdf(string job) => Encoding.UTF8.GetBytes($"%PDF-1.7 stand-in for {job}");

    /// <summary>The folder holds what the register says was issued into it, byte for byte, and nothing else.</summary>
    internal static void AssertFolderEqualsRegister(DocumentRegister register, string folder)
    {
        var issued = register.Issued().ToDictionary(document => document.FileName, document => document.Sha256, StringComparer.Ordinal);
        var found = Directory.EnumerateFiles(folder).ToDictionary(
            file => Path.GetFileName(file), file => DurableFile.Hash(File.ReadAllBytes(file)), StringComparer.Ordinal);
        Assert.Equal(issued.OrderBy(pair => pair.Key, StringComparer.Ordinal), found.OrderBy(pair => pair.Key, StringComparer.Ordinal));
        Assert.Empty(register.Check());
    }

    /// <summary>Numbers 1 to n are each either issued or void, once.</summary>
    internal static void AssertNoNumberLostOrReused(DocumentRegister register, int count)
    {
        var sequences = register.Issued().Select(document => document.Number)
            .Concat(register.Voided().Select(document => document.Number))
            .Select(number => DocumentNumber.TryParse(number, out var parsed) ? parsed.Sequence : 0)
            .Order();
        Assert.Equal(Enumerable.Range(1, count), sequences);
    }

    public void Dispose()
    {
        _root.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }
}
