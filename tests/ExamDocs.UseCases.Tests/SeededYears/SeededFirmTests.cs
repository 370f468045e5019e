using ExamDocs.Core.Findings;
using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

public sealed class SeededFirmTests(SeededRegister seeded)
{
    [Fact]
    public void Equal_seeds_give_equal_bytes_and_others_do_not()
    {
        var (one, again, other) = (SeededFirm.Files(1), SeededFirm.Files(1), SeededFirm.Files(2));

        Assert.Equal(one.Select(f => f.Name), again.Select(f => f.Name));
        Assert.All(one.Zip(again), pair => Assert.True(pair.First.Json.AsSpan().SequenceEqual(pair.Second.Json)));
        Assert.Contains(one.Zip(other), pair => !pair.First.Json.AsSpan().SequenceEqual(pair.Second.Json));
    }

    [Fact]
    public void There_are_400_items_over_three_years_with_all_that_happens_to_kit()
    {
        var visits = SeededFirm.Of(1);

        var first = visits.Take(SeededFirm.Sites).ToList();

        // What was put into service in the course of the first round is not among what was there before it.
        Assert.Equal(400, first.Sum(v => v.Items.Count - v.Examinations.Count(e => e.Basis is Basis.FirstUse)));
        Assert.Equal(36, Period.Between(visits[0].Visit.ExaminedOn!.Value, visits[^1].Visit.ExaminedOn!.Value, PeriodUnits.Months).Months);
        Assert.InRange(visits.Sum(v => v.Renewals.Count), 40, 400);
        Assert.Contains(visits, v => v.Items.Any(i => i.Status is ItemStatus.Lost));
        Assert.Contains(visits, v => v.Examinations.Any(e => e.Basis is Basis.Exceptional && e.Conclusion is Conclusion.Withdraw));
    }

    [Fact]
    public void The_register_takes_all_of_it_without_an_error()
    {
        Assert.Equal(SeededFirm.Of(1).Count, seeded.Inputs.Count);
        var errors = seeded
            .Inputs.SelectMany(i => i.Visit!.Findings)
            .Where(f => f.Severity is Severity.Error)
            .Select(f => $"{f.Code} {f.Path} {f.Message.Text}");
        Assert.Empty(errors);
    }
}
