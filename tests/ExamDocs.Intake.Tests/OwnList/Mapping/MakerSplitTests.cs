using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Tests.OwnList.Mapping;

/// <summary>Maker and model are told apart by what the list itself shows.</summary>
public sealed class MakerSplitTests
{
    [Theory]
    [InlineData("Osk and Lund / Brig", "Osk and Lund", "Brig")]
    [InlineData("Osk and Lund - Brig 2", "Osk and Lund", "Brig 2")]
    [InlineData("Osk and Lund: Brig", "Osk and Lund", "Brig")]
    public void At_the_sign_between_them(string typed, string maker, string model)
    {
        var sign = typed["Osk and Lund".Length..].TrimEnd('2').Replace("Brig", "", StringComparison.Ordinal).TrimEnd();
        var item = Items($"K1;Karabiner;{typed}", $"K2;Karabiner;Tarn{sign} T4")[0];
        Assert.Equal((maker, model), (item.Maker, item.Model));
    }

    [Fact]
    public void After_a_maker_that_several_models_share()
    {
        var items = Items("K1;Karabiner;Osk and Lund Brig", "K2;Karabiner;Osk and Lund Sloop", "K3;Karabiner;Tarn T4");
        Assert.Equal(("Osk and Lund", "Brig"), (items[0].Maker, items[0].Model));
        Assert.Equal((null, "Tarn T4"), (items[2].Maker, items[2].Model));
    }

    [Fact]
    public void After_a_maker_that_another_column_names()
    {
        var items = Lists.Take("Asset;Type;Maker;Make/Model", "K1;Karabiner;Tarn;", "K2;Karabiner;;Tarn T4").Record.Items;
        Assert.Equal(("Tarn", "T4"), (items[1].Maker, items[1].Model));
    }

    private static IReadOnlyList<Item> Items(params string[] rows) => Lists.Take(["Asset;Type;Make/Model", .. rows]).Record.Items;
}
