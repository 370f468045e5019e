using ExamDocs.Core.Recalls;
using ExamDocs.Core.Records;
using static ExamDocs.Core.Recalls.RecallVerdict;

namespace ExamDocs.Core.Tests.Recalls;

/// <summary>Maker, model, part number, batch and date against a notice; what is missing or spelt otherwise excludes nothing.</summary>
public sealed class RecallCheckTests
{
    private static readonly Item Named = new()
    {
        Maker = Notices.Maker,
        Model = "Hazelcroft 2",
        PartNumber = "WB-11-38",
        Serial = "HZ-1500",
        Manufactured = new PartialDate(2024, 3),
    };

    private static readonly NamedKit Kit = new()
    {
        Models = ["Hazelcroft 2"],
        SerialRanges = [new("HZ-1000", "HZ-2000")],
        ManufacturedFrom = new PartialDate(2024, 2),
        ManufacturedTo = new PartialDate(2024, 4, 15),
    };

    [Theory]
    [InlineData("Wenderby Harness Ltd", Affected)]
    [InlineData("WENDERBY-HARNESS", Affected)]
    [InlineData("Wenderby Harness GmbH", Affected)]
    [InlineData("Wenderby  harness", Affected)]
    [InlineData("W\u00E9nderby Harness", Affected)]
    [InlineData(null, CannotTell)]
    [InlineData("?", CannotTell)]
    [InlineData("Wenderby", CannotTell)]
    [InlineData("Wenderbey Harnes", CannotTell)]
    [InlineData("Wenderby Harness and Rope", CannotTell)]
    [InlineData("WH", CannotTell)]
    [InlineData("W.H.", CannotTell)]
    [InlineData("Wendreby", CannotTell)]
    [InlineData("VVenderby Harness", CannotTell)]
    [InlineData("W\u0435nderby Harness", CannotTell)]
    [InlineData("Wenderby (new)", CannotTell)]
    [InlineData("Wendarbie Harness", CannotTell)]
    [InlineData("Colverbeck Ropes Ltd", NotAffected)]
    public void A_maker_is_the_one_named_may_be_it_or_is_another(string? maker, RecallVerdict expected) =>
        Assert.Equal(expected, Notices.Verdict(Kit, Named with { Maker = maker }));

    [Theory]
    [InlineData("hazelcroft-2", Affected)]
    [InlineData("Hazelcroft2", Affected)]
    [InlineData(null, CannotTell)]
    [InlineData("Hazelcroft", CannotTell)]
    [InlineData("Hazelcroft II", CannotTell)]
    [InlineData("Hazelcroft two", CannotTell)]
    [InlineData("Haz\u00E9lcr0ft", CannotTell)]
    [InlineData("Haze1croft 2", Affected)]
    [InlineData("Hazel Croft 2", Affected)]
    [InlineData("Hazlecroft 2", CannotTell)]
    [InlineData("Hazelcroft 2 size M", CannotTell)]
    [InlineData("Hazelcroft 2 (2024)", CannotTell)]
    [InlineData("Wenderby Hazelcroft 2", CannotTell)]
    [InlineData("HC 2", CannotTell)]
    [InlineData("Hazelcroft (2024)", CannotTell)]
    [InlineData("Hazelcroft 3", NotAffected)]
    [InlineData("Birchholm 2", NotAffected)]
    public void A_model_is_one_that_is_named_may_be_it_or_is_another(string? model, RecallVerdict expected) =>
        Assert.Equal(expected, Notices.Verdict(Kit, Named with { Model = model }));

    [Theory]
    [InlineData("WB 11-38", Affected)]
    [InlineData(null, CannotTell)]
    [InlineData("WB-11", CannotTell)]
    [InlineData("WB-11-40", NotAffected)]
    public void A_part_number_narrows_where_it_is_on_record(string? part, RecallVerdict expected) =>
        Assert.Equal(expected, Notices.Verdict(new NamedKit { PartNumbers = ["WB-11-38"] }, Named with { PartNumber = part }));

    [Fact]
    public void A_part_number_that_is_named_outweighs_the_name_of_a_model() =>
        Assert.Equal(
            CannotTell,
            Notices.Verdict(new NamedKit { Models = ["Hazelcroft bridge"], PartNumbers = ["WB-11-38"] }, Named with { Model = "Loop 9" })
        );

    [Theory]
    [InlineData("Arc", "Ark", CannotTell)]
    [InlineData("Arc", "Arcs", CannotTell)]
    [InlineData("Arc", "Loop", NotAffected)]
    [InlineData("\u0412\u0435\u043D\u0434 Harness", "Vend", CannotTell)]
    [InlineData("Mark II", "Mark 2", CannotTell)]
    [InlineData("Ridge 11 size 2", "Ridge eleven size 2", CannotTell)]
    [InlineData("  ", "Ridge", CannotTell)]
    public void Short_names_other_scripts_and_numbers_in_words_leave_it_open(string named, string typed, RecallVerdict expected) =>
        Assert.Equal(expected, Notices.Verdict(new NamedKit { Models = [named] }, Named with { Model = typed }));

    public static TheoryData<PartialDate?, RecallVerdict> Dates { get; } =
        new()
        {
            { null, CannotTell },
            { new PartialDate(2024), CannotTell },
            { new PartialDate(2024, 4), CannotTell },
            { new PartialDate(2024, 2, 1), Affected },
            { new PartialDate(2024, 4, 15), Affected },
            { new PartialDate(2024, 1, 31), NotAffected },
            { new PartialDate(2024, 4, 16), NotAffected },
            { new PartialDate(2023), NotAffected },
        };

    [Theory]
    [MemberData(nameof(Dates))]
    public void A_date_counts_as_whole_as_it_is_on_record(PartialDate? made, RecallVerdict expected) =>
        Assert.Equal(expected, Notices.Verdict(Kit, Named with { Manufactured = made }));

    [Fact]
    public void A_batch_is_named_or_not_on_record_and_excludes_nothing()
    {
        var kit = new NamedKit { Batches = ["B-2403"] };
        Assert.Equal(Affected, Notices.Verdict(kit, Named with { Serial = "b2403" }));
        Assert.Equal(CannotTell, Notices.Verdict(kit, Named));
    }

    [Fact]
    public void Where_records_of_one_item_disagree_each_counts()
    {
        Assert.Equal(Affected, Notices.Verdict(Kit, Named with { Serial = "HZ-9000" }, Named));
        Assert.Equal(CannotTell, Notices.Verdict(Kit, Named with { Serial = "HZ-9000" }, Named with { Serial = "HZ-1?00" }));
        Assert.Equal(NotAffected, Notices.Verdict(Kit, Named with { Serial = "HZ-9000" }, new Item { Id = "X" }));
    }

    [Fact]
    public void What_excludes_an_item_outweighs_what_is_missing() =>
        Assert.Equal(NotAffected, Notices.Verdict(Kit, new Item { Serial = "HZ-9000" }));

    [Fact]
    public void Of_several_kinds_of_kit_one_is_enough_and_says_why()
    {
        var answer = RecallCheck.Of(Notices.Of(new NamedKit { Models = ["Birchholm"] }, Kit), [Named]);
        Assert.Equal(Affected, answer.Verdict);
        Assert.Contains("serial number 'HZ-1500' is named", answer.Reasons.Select(r => r.Text));
    }

    [Fact]
    public void What_is_open_is_said()
    {
        var answer = RecallCheck.Of(Notices.Of(Kit), [Named with { Serial = null }]);
        Assert.Equal(["no serial number is on record"], answer.Reasons.Select(r => r.Text));
    }

    [Fact]
    public void A_maker_is_known_by_its_other_names_too() =>
        Assert.Equal(
            Affected,
            RecallCheck
                .Of(Notices.Of(Kit) with { AlsoCalled = ["Quillmere Gurte"] }, [Named with { Maker = "QUILLMERE GURTE GmbH" }])
                .Verdict
        );
}
