using System.Text;
using ExamDocs.Core.Regimes;
using ExamDocs.Register;
using ExamDocs.Register.Model;
using ExamDocs.UseCases.Commands;
using ExamDocs.UseCases.Tests.Issuing;
using static ExamDocs.UseCases.Tests.Registered.Visits;

namespace ExamDocs.UseCases.Tests.Registered;

/// <summary>Two examiners who kept registers of their own: once joined, what either withdrew is withdrawn for both.</summary>
public sealed class MergeRegistersTests : IDisposable
{
    private readonly Visits _here = new();
    private readonly Visits _there = new();

    public void Dispose()
    {
        _here.Dispose();
        _there.Dispose();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_either_withdrew_ends_the_other_s_label_and_holds_at_the_next_visit(bool withdrawnThere)
    {
        var (withdrawing, other) = withdrawnThere ? (_there, _here) : (_here, _there);
        other.Import(Visit("V-1", "2026-05-11"));
        var label = Label(other.Register);
        withdrawing.Import(Visit("V-2", "2026-11-02", withdraw: true));
        var result = MergeRegisters.Run(_here.Register, _there.Register, Today);
        Assert.Equal((1, withdrawnThere ? 0 : 1), (result.Result.Visits, result.Result.Documents));
        Assert.Equal(
            [$"{label} (next-examination label of CON-02) no longer holds: it was withdrawn on 2026-11-02. Take the label off."],
            result.Remarks
        );
        using (var register = DocumentRegister.OpenToRead(_here.Register, Today))
        {
            var ended = register.Find(label)!;
            Assert.Equal((DocumentEnd.Ended, new NodaTime.LocalDate(2026, 11, 2)), (ended.Ended, ended.EndedOn));
            Assert.Empty(CheckRegister.Run(register, [], KnownRules.BuiltIn).Faults);
        }
        var next = _here.Check(Visit("V-3", "2027-05-03"));
        Assert.Equal(ExamDocs.Core.Records.Outcome.Withdraw, next.Outcome);
        Assert.Contains(next.Reasons, r => r.Code is "W10");
        var again = MergeRegisters.Run(_here.Register, _there.Register, Today);
        Assert.Equal((0, 0), (again.Result.Visits, again.Result.Documents));
        Assert.Empty(again.Remarks);
    }

    [Fact]
    public void One_that_was_looked_at_later_by_whoever_did_not_know_is_named()
    {
        _here.Import(Visit("V-1", "2026-05-11", withdraw: true));
        _there.Import(Visit("V-2", "2026-11-02"));
        var result = MergeRegisters.Run(_here.Register, _there.Register, Today);
        Assert.Contains(
            "CON-02 was withdrawn on 2026-05-11 in one register, and looked at again on 2026-11-02 in the other",
            Assert.Single(result.Remarks),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_label_that_has_ended_is_not_printed_again_and_its_record_is_decided_anew()
    {
        _here.Import(Visit("V-1", "2026-05-11"));
        var label = Label(_here.Register);
        _here.Import(Visit("V-2", "2026-11-02", withdraw: true));
        var result = await PrintLabels.RunAsync(
            new LabelRequest
            {
                InputsOrNumbers = [label],
                OutFile = Path.Combine(Path.GetDirectoryName(_here.Register)!, "labels.pdf"),
                RegisterPath = _here.Register,
                Today = Today,
            },
            TestContext.Current.CancellationToken
        );
        Assert.StartsWith($"{label} no longer holds: CON-02 ended on 2026-11-02: was withdrawn", result.Refused, StringComparison.Ordinal);
        Assert.Empty(result.Labels);
    }

    /// <summary>A label of the first visit, as the press would have issued it.</summary>
    private static string Label(string place)
    {
        using var register = DocumentRegister.Open(place, Today);
        var pending = register.Take(new('D', 2027, "due-label", "job", [Item], Path.GetDirectoryName(place)!) { Visit = 1 });
        return register.Publish(pending, Encoding.UTF8.GetBytes("%PDF-1.7 stand-in"), 1, $$"""{"{{Item}}":"fit"}""").Number;
    }
}
