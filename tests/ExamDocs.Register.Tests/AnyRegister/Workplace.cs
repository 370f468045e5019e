using System.Diagnostics;
using System.Text;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.Register.Storage;

namespace ExamDocs.Register.Tests;

/// <summary>
/// A register of its own for one test and a folder for documents; gone afterwards. Where the register is, each project says.
/// </summary>
public abstract partial class Workplace : IDisposable
{
    private readonly DirectoryInfo _root;

    protected Workplace()
    {
        SetUp();
        _root = Directory.CreateTempSubdirectory("examdocs-register-");
    }

    internal string Out => Path.Combine(_root.FullName, "out");

    internal string Root => _root.FullName;

    internal DocumentRegister Open() => DocumentRegister.Open(Database);

    /// <summary>What somebody with a tool of the database's own might do.</summary>
    internal void ByHand(string statement, params object?[] values)
    {
        using var connection = Connect();
        connection.Execute(statement, values);
    }

    /// <summary>What is left of a guard once somebody who may has taken it away.</summary>
    internal void TakeAwayGuard(string name) => ByHand($"DROP TRIGGER {name}{OfTable(Guards.All.Single(g => g.Name == name).Table)}");

    /// <summary>Recovers until nothing is pending: a server may take a moment to see that a run was killed.</summary>
    internal static void Settle(DocumentRegister register)
    {
        var waited = Stopwatch.StartNew();
        do register.Recover();
        while (register.Rows.Documents.Pending().Count > 0 && waited.Elapsed < TimeSpan.FromSeconds(60));
    }

    internal PendingDocument Take(DocumentRegister register, string job, char letter = 'R', int year = 2026) =>
        register.Take(new DocumentRequest(letter, year, "report", job, ["HB-014", "HB-014-B"], Out));

    internal IssuedDocument Issue(DocumentRegister register, string job, char letter = 'R', int year = 2026) =>
        register.Publish(Take(register, job, letter, year), Pdf(job), 2, """{"HB-014":"fit"}""");

    internal static byte[] Pdf(string job) => Encoding.UTF8.GetBytes($"%PDF-1.7 stand-in for {job}");

    /// <summary>The folder holds what the register says was issued into it, byte for byte, and nothing else.</summary>
    internal static void AssertFolderEqualsRegister(DocumentRegister register, string folder)
    {
        var issued = register.Issued().ToDictionary(document => document.FileName, document => document.Sha256, StringComparer.Ordinal);
        var found = Directory
            .EnumerateFiles(folder)
            .ToDictionary(file => Path.GetFileName(file), file => Sha256Hex.Of(File.ReadAllBytes(file)), StringComparer.Ordinal);
        Assert.Equal(issued.OrderBy(pair => pair.Key, StringComparer.Ordinal), found.OrderBy(pair => pair.Key, StringComparer.Ordinal));
        Assert.Empty(register.Check());
    }

    /// <summary>Numbers 1 to n are each either issued or void, once.</summary>
    internal static void AssertNoNumberLostOrReused(DocumentRegister register, int count)
    {
        var sequences = register
            .Issued()
            .Select(document => document.Number)
            .Concat(register.Voided().Select(document => document.Number))
            .Select(number => DocumentNumber.TryParse(number, out var parsed) ? parsed.Sequence : 0)
            .Order();
        Assert.Equal(Enumerable.Range(1, count), sequences);
    }

    partial void SetUp();

    partial void TakeDown();

    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing)
    {
        TakeDown();
        _root.Delete(recursive: true);
    }
}
