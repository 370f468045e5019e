using ExamDocs.Proof.Tests;
using ExamDocs.Proof.Tests.Histories;
using ExamDocs.Register.Tests;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>Over a register on a server the programme says of every history what the second evaluator says.</summary>
public sealed class HistoriesTests : Workplace
{
    [Fact]
    public void Of_every_history() => Agreement.Check(Effort.Of(3, 200), prints: false, (seed, attempt) =>
        {
            var name = FormattableString.Invariant($"history_{seed}_{attempt}");
            OnTheServer($"CREATE DATABASE {name} TEMPLATE template0");
            return new Imported(Server.AddressOf(name), Directory.CreateDirectory(Path.Combine(Root, name)).FullName);
        });
}
