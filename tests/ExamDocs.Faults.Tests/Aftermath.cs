using System.Security.Cryptography;
using ExamDocs.Register;
using ExamDocs.Register.Log;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Faults.Tests;

/// <summary>What must be so whenever a run has come to its end, whatever happened to those before.</summary>
internal static class Aftermath
{
    private const string CheckpointName = "checkpoint.json";

    /// <summary>
    /// Nothing is pending, the register is sound, its numbers are gapless and each there once, and the folder holds the
    /// documents issued, byte for byte, their list, a checkpoint that the log still agrees with, and nothing else.
    /// </summary>
    /// <returns>Everything issued.</returns>
    public static IReadOnlyList<IssuedDocument> AssertSound(string register, string folder)
    {
        using var opened = DocumentRegister.Open(register);
        Assert.Empty(opened.Recover());
        var checkpoint = CheckpointFile.Read(File.ReadAllBytes(Path.Combine(folder, CheckpointName)));
        Assert.Empty(checkpoint.Faults);
        Assert.Empty(opened.Check(checkpoint.Checkpoint!));
        var issued = opened.Issued();
        AssertGapless([.. issued.Select(d => d.Number), .. opened.Voided().Select(d => d.Number)]);
        Assert.Equal(
            issued.Select(d => d.FileName).Append(DocumentsFile.FileName).Append(CheckpointName).Order(StringComparer.Ordinal),
            Directory.EnumerateFileSystemEntries(folder).Select(p => Path.GetFileName(p)).Order(StringComparer.Ordinal)
        );
        Assert.All(issued, d => Assert.Equal(d.Sha256, Sha256(Path.Combine(folder, d.FileName))));
        return issued;
    }

    private static void AssertGapless(IReadOnlyList<string> numbers)
    {
        foreach (var sequence in numbers.GroupBy(number => number[..number.LastIndexOf('-')], StringComparer.Ordinal))
        {
            Assert.Equal(
                Enumerable.Range(1, sequence.Count()),
                sequence.Select(number => DocumentNumber.TryParse(number, out var read) ? read.Sequence : 0).Order()
            );
        }
    }

    private static string Sha256(string path) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)));
}
