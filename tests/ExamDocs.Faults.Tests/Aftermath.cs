using System.Security.Cryptography;
using System.Text.Json.Nodes;
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
    /// documents issued, byte for byte, those that were replaced apart, a list of exactly these, a checkpoint that the log still agrees
    /// with, and nothing else.
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
        var places = issued.ToDictionary(d => PlaceOf(opened, d), d => d, StringComparer.Ordinal);
        Assert.Equal(
            places.Keys.Append(DocumentsFile.FileName).Append(CheckpointName).Order(StringComparer.Ordinal),
            Directory
                .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
                .Select(p => Path.GetRelativePath(folder, p))
                .Order(StringComparer.Ordinal)
        );
        Assert.All(places, p => Assert.Equal(p.Value.Sha256, Sha256(Path.Combine(folder, p.Key))));
        Assert.Equal(places.Keys.Order(StringComparer.Ordinal), Listed(Path.Combine(folder, DocumentsFile.FileName)));
        return issued;
    }

    /// <summary>What another took the place of lies apart.</summary>
    private static string PlaceOf(DocumentRegister register, IssuedDocument document) =>
        register.Find(document.Number)!.Ended is DocumentEnd.Replaced ? Path.Combine("replaced", document.FileName) : document.FileName;

    private static IEnumerable<string> Listed(string list)
    {
        var json = JsonNode.Parse(File.ReadAllText(list))!;
        return new[] { "documents", "replaced" }
            .SelectMany(member => json[member]!.AsArray())
            .Select(d => (string)d!["file"]!)
            .Order(StringComparer.Ordinal);
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
