using ExamDocs.Core.Regimes;
using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.Tests.OwnList.Words;

/// <summary>A word means a category for sure only where it means no other.</summary>
public sealed class KindPhrasesTests
{
    private static readonly KindPhrases Kinds = new(KnownRules.BuiltIn);

    [Theory]
    [InlineData("Karabiner", "connector")]
    [InlineData("HMS", "connector")]
    [InlineData("Steel karabiners, twist lock", "connector")]
    [InlineData("bridge", "rope-bridge")]
    [InlineData("Rope bridges", "rope-bridge")]
    [InlineData("Harness bridge", "rope-bridge")]
    [InlineData("Bridge for harness", "rope-bridge")]
    [InlineData("Gurt", "harness")]
    [InlineData("Klettergurte", "harness")]
    [InlineData("harnais", "harness")]
    [InlineData("Casques", "helmet")]
    [InlineData("Schutzhelm", "helmet")]
    [InlineData("Halteseil mit Karabiner", "lanyard")]
    [InlineData("Rigging rope 14 mm", "rigging-rope")]
    [InlineData("Poulie de rétention", "rigging-block")]
    [InlineData("Brücken", "rope-bridge")]
    [InlineData("energy-absorber", "energy-absorber")]
    public void Sure(string typed, string category)
    {
        Assert.Equal(category, Kinds.Find(typed)?.Category);
        Assert.Equal(Sureness.Yes, Kinds.Find(typed)?.Sure);
    }

    [Theory]
    [InlineData("Rope 45 m")]
    [InlineData("ring")]
    [InlineData("Harness and helmet")]
    [InlineData("Wandergurt")]
    [InlineData("Hand ascender")]
    public void Not_sure(string typed) => Assert.Equal(Sureness.Likely, Kinds.Find(typed)?.Sure);

    [Theory]
    [InlineData("Throw bag")]
    [InlineData("First aid kit")]
    [InlineData("")]
    public void Unknown(string typed) => Assert.Null(Kinds.Find(typed));

    /// <summary>No phrase that is built in may name a category that is not.</summary>
    [Fact]
    public void Every_category_has_words_of_its_own_in_three_languages()
    {
        Dictionary<string, string[]> words = new(StringComparer.Ordinal)
        {
            ["harness"] = ["harness", "Klettergurt", "harnais"],
            ["rope-bridge"] = ["rope bridge", "Seilbrücke", "pont de corde"],
            ["climbing-rope"] = ["climbing rope", "Kletterseil", "corde de grimpe"],
            ["lanyard"] = ["lanyard", "Halteseil", "longe"],
            ["connector"] = ["connector", "Karabinerhaken", "mousqueton"],
            ["pulley"] = ["pulley", "Seilrolle", "poulie"],
            ["swivel-ring"] = ["swivel", "Wirbel", "émerillon"],
            ["rope-adjuster"] = ["rope adjuster", "Seilkürzer", "ajusteur"],
            ["friction-cord"] = ["hitch cord", "Prusikschlinge", "cordelette"],
            ["sling"] = ["sling", "Bandschlinge", "élingue"],
            ["anchor-cover"] = ["cambium saver", "Kambiumschoner", "fausse fourche"],
            ["energy-absorber"] = ["shock absorber", "Falldämpfer", "absorbeur"],
            ["helmet"] = ["helmet", "Helm", "casque"],
            ["rigging-rope"] = ["rigging line", "Ablassseil", "corde de démontage"],
            ["rigging-block"] = ["rigging block", "Umlenkblock", "bloc de rétention"],
            ["lowering-device"] = ["bollard", "Abseilpoller", "tambour de freinage"],
        };
        Assert.Equal(
            KnownRules.BuiltIn.Categories.Select(c => c.Id).Order(StringComparer.Ordinal),
            words.Keys.Order(StringComparer.Ordinal)
        );
        foreach (var (category, of) in words)
            Assert.All(of, word => Assert.Equal((category, Sureness.Yes), (Kinds.Find(word)?.Category, Kinds.Find(word)?.Sure)));
    }
}
