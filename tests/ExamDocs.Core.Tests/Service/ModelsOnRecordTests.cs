using ExamDocs.Core.Records;
using ExamDocs.Core.Service;
using NodaTime;

namespace ExamDocs.Core.Tests.Service;

public sealed class ModelsOnRecordTests
{
    private static readonly LocalDate Spring = new(2026, 5, 11);
    private static readonly LocalDate Autumn = new(2026, 11, 2);

    [Fact]
    public void A_later_revision_takes_the_place_of_an_earlier_one_whatever_the_order_of_the_records()
    {
        var models = ModelsOnRecord.Of([Record(Autumn, Limits("4", 8)), Record(Spring, Limits("3", 10))]);

        var model = Assert.Single(models);
        Assert.Equal(("4", 8, Autumn, false), (model.Limits.Source!.Revision, model.Limits.MaxAgeYears, model.LastUsed, model.IsDisputed));
    }

    [Fact]
    public void Spellings_of_one_model_are_one_model()
    {
        var models = ModelsOnRecord.Of([
            Record(Spring, Limits("3", 10)),
            Record(Autumn, Limits("3", 10) with { Maker = "FENNICK  WORKS", Model = "f-1" }),
        ]);

        Assert.Equal("f-1", Assert.Single(models).Limits.Model);
        Assert.False(models[0].IsDisputed);
    }

    [Theory]
    [InlineData("3", true)]
    [InlineData("4", false)]
    public void Two_values_under_one_revision_are_disputed(string revision, bool isDisputed)
    {
        var models = ModelsOnRecord.Of([Record(Spring, Limits("3", 10)), Record(Autumn, Limits(revision, 15))]);

        Assert.Equal(isDisputed, Assert.Single(models).IsDisputed);
    }

    [Fact]
    public void Lists_of_the_same_parts_are_the_same_value_and_an_examiners_own_end_is_none_of_the_makers()
    {
        var one = Limits("3", 10) with { PermittedParts = ["SP-11", "SP-12"] };
        var other = Limits("3", 10) with
        {
            PermittedParts = ["SP-11", "SP-12"],
            Unobtainable = new Unobtainable { Sought = "asked the maker", UseUntil = Autumn },
        };

        Assert.False(Assert.Single(ModelsOnRecord.Of([Record(Spring, one), Record(Autumn, other)])).IsDisputed);
    }

    [Fact]
    public void Limits_of_a_part_are_apart_from_those_of_its_model_and_those_without_a_model_are_left_out()
    {
        var models = ModelsOnRecord.Of([
            Record(Spring, Limits("3", 10), Limits("3", 5) with { PartNumber = "SP-11" }, Limits("3", 1) with { Model = null }),
        ]);

        Assert.Equal([null, "SP-11"], models.Select(m => m.Limits.PartNumber));
    }

    [Fact]
    public void A_revision_is_one_however_it_is_called() =>
        Assert.True(Assert.Single(ModelsOnRecord.Of([Record(Spring, Limits("2", 6)), Record(Autumn, Limits("Rev. 2", 10))])).IsDisputed);

    [Fact]
    public void Of_two_visits_of_one_day_neither_is_the_later() =>
        Assert.True(Assert.Single(ModelsOnRecord.Of([Record(Spring, Limits("3", 6)), Record(Spring, Limits("2", 10))])).IsDisputed);

    private static ExaminationRecord Record(LocalDate day, params MakersLimits[] limits) =>
        new()
        {
            Visit = new Visit { ExaminedOn = day },
            Limits = limits,
        };

    private static MakersLimits Limits(string revision, int years) =>
        new()
        {
            Maker = "Fennick Works",
            Model = "F1",
            MaxAgeYears = years,
            Source = new LimitsSource
            {
                Title = "F1 instructions",
                Revision = revision,
                Page = "9",
            },
        };
}
