using System.Text;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Issuing;
using ExamDocs.UseCases.Verifying;

namespace ExamDocs.UseCases.Tests.Verifying;

/// <summary>What a register says of a document: since when and by what it has ended, and whose number it is.</summary>
public sealed class RegisterQuestionsTests
{
    private static readonly byte[] Pdf = Encoding.UTF8.GetBytes("%PDF-1.7 stand-in");
    private static readonly string Here = new('a', 32);
    private static readonly string There = new('b', 32);

    private static readonly DocumentStatus Issued = new()
    {
        Number = "R-2026-000001",
        Kind = "report",
        JobKey = "k",
        Folder = "out",
        State = DocumentState.Issued,
        Items = ["RB-1", "RB-2"],
        Sha256 = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Pdf)),
    };

    private static readonly EndedLine Line = new("RB-1", new(2026, 9, 3), "was withdrawn", 4, ["Q-2026-000007", "N-2026-000002"]);

    [Fact]
    public void A_line_that_ended_makes_it_not_valid_and_says_that_the_others_hold() =>
        Assert.Equal(
            "R-2026-000001 no longer holds for RB-1: RB-1 ended on 2026-09-03: was withdrawn (Q-2026-000007, N-2026-000002); "
                + "for the other items it still does",
            Fault(Ask(Issued with { EndedLines = [Line] }))
        );

    [Fact]
    public void A_document_that_ended_says_since_when_and_by_which_document() =>
        Assert.Equal(
            "D-2026-000003 no longer holds: RB-1 ended on 2026-09-03: was withdrawn (Q-2026-000007, N-2026-000002)",
            Fault(
                Ask(
                    Issued with
                    {
                        Number = "D-2026-000003",
                        Kind = "due-label",
                        Ended = DocumentEnd.Ended,
                        EndedOn = new(2026, 9, 3),
                        EndedReason = "was withdrawn",
                        EndedLines = [Line],
                    }
                )
            )
        );

    [Fact]
    public void One_whose_lines_all_hold_is_current() => Assert.DoesNotContain(Ask(Issued), s => s.Answer is Answer.Fails);

    [Theory]
    [InlineData(null, null)]
    [InlineData("other bytes", "not the one that was issued")]
    public void Under_the_same_register_other_bytes_are_not_valid(string? bytes, string? fault)
    {
        var said = RegisterQuestions
            .Ask(Issued.Number, bytes is null ? Pdf : Encoding.UTF8.GetBytes(bytes), new(_ => Issued, Here, null), Here)
            .ToList();
        Assert.Equal(fault is null, !said.Exists(s => s.Answer is Answer.Fails));
        Assert.True(fault is null || said.Exists(s => s.Text.Text.Contains(fault, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_number_that_another_register_gave_out_cannot_be_told_here()
    {
        var other = Encoding.UTF8.GetBytes("%PDF-1.7 of another register");
        var said = Assert.Single(RegisterQuestions.Ask(Issued.Number, other, new(_ => Issued, Here, null), There));
        Assert.Equal(Answer.NotChecked, said.Answer);
        Assert.Contains("another register (bbbbbbbb)", said.Text.Text, StringComparison.Ordinal);
        Assert.Equal(
            Answer.NotChecked,
            Assert.Single(RegisterQuestions.Ask("R-2026-000009", other, new(_ => null, Here, null), There)).Answer
        );
        Assert.Equal(Answer.Fails, Assert.Single(RegisterQuestions.Ask("R-2026-000009", other, new(_ => null, Here, null), Here)).Answer);
    }

    [Fact]
    public void One_that_was_taken_in_from_another_register_is_known_here()
    {
        var merged = Issued with { Origin = There };
        Assert.DoesNotContain(RegisterQuestions.Ask(merged.Number, Pdf, new(_ => merged, Here, null), There), s =>
            s.Answer is not Answer.Holds
        );
        Assert.Contains(
            RegisterQuestions.Ask(merged.Number, Encoding.UTF8.GetBytes("other bytes"), new(_ => merged, Here, null), There),
            s => s.Answer is Answer.Fails
        );
    }

    private static List<Statement> Ask(DocumentStatus known) =>
        [.. RegisterQuestions.Ask(known.Number, Pdf, new(_ => known, Here, null), Here)];

    private static string Fault(List<Statement> said) => Assert.Single(said, s => s.Answer is Answer.Fails).Text.Text;
}
