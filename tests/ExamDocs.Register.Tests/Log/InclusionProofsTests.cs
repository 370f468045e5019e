using ExamDocs.Register.Log;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Tests.Log;

/// <summary>A proof leads from the entry by which a document came out to the root of the log, and to no other.</summary>
public sealed class InclusionProofsTests
{
    [Fact]
    public void Each_proof_holds_for_its_entry_and_for_no_other()
    {
        var log = Entries.Log(23).ConvertAll(entry => entry.ToArray());
        var numbers = log.Select(e => LogEntry.Parse(e))
            .Where(e => e.What is LogEntry.IssuedWord)
            .Select(e => e.Document!.Number)
            .ToHashSet();
        var (proofs, root) = InclusionProofs.Of(log, numbers);
        Assert.Equal(numbers, proofs.Select(p => p.Number).ToHashSet());
        foreach (var proof in proofs)
        {
            Assert.Equal(
                (proof.Number, proof.Position),
                (LogEntry.Parse(proof.Entry).Document!.Number, LogEntry.Parse(proof.Entry).Position)
            );
            Assert.True(Shows(proof, proof.Entry.ToArray(), root));
            Assert.False(Shows(proof, log[(int)((proof.Position + 1) % 23)], root));
        }
    }

    [Fact]
    public void A_document_that_did_not_come_out_has_no_proof()
    {
        var log = Entries.Log(7).ConvertAll(entry => entry.ToArray());
        Assert.Empty(InclusionProofs.Of(log, new HashSet<string> { "R-2026-000004", "R-2026-000099" }).Proofs);
    }

    [Fact]
    public void A_register_gives_proofs_that_lead_to_its_checkpoint()
    {
        var folder = Directory.CreateTempSubdirectory("examdocs-");
        using (var register = DocumentRegister.Open(Path.Combine(folder.FullName, "kit.db"), Entries.Day))
            AssertShown(register);
        folder.Delete(recursive: true);
    }

    private static void AssertShown(DocumentRegister register)
    {
        var issued = Enumerable
            .Range(1, 5)
            .Select(n =>
                register
                    .Publish(register.Take(new DocumentRequest('R', 2026, "report", $"job {n}", ["A"], null)), [(byte)n], 1, "{}")
                    .Number
            )
            .ToHashSet();
        var (checkpoint, proofs) = register.Proofs(issued);
        Assert.Equal(5, proofs.Count);
        Assert.All(proofs, p =>
            Assert.True(
                MerkleProof.ShowsInclusion(
                    MerkleTree.LeafHash(p.Entry.Span),
                    p.Position,
                    checkpoint!.Size,
                    p.Path,
                    checkpoint.Root.ToArray()
                )
            )
        );
    }

    private static bool Shows(InclusionProof proof, byte[] entry, byte[] root) =>
        MerkleProof.ShowsInclusion(MerkleTree.LeafHash(entry), proof.Position, 23, proof.Path, root);
}
