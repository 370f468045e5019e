using ExamDocs.Core.Criteria;

namespace ExamDocs.Core.Tests.Criteria;

/// <summary>The list for rope bridges is agreed: editing the data file alone must not change it unnoticed.</summary>
public sealed class RopeBridgeCriteriaTests
{
    /// <summary>Id, class, required, then noted, not-applicable, no-sign allowed (common practice, no source).</summary>
    private static readonly (string, CriterionClass, bool, bool, bool, bool)[] Agreed =
    [
        ("identity", CriterionClass.Decisive, true, true, false, false),
        ("cover-cut", CriterionClass.Decisive, true, false, false, false),
        ("saw-contact", CriterionClass.Decisive, true, false, false, true),
        ("core-visible", CriterionClass.Decisive, true, false, false, false),
        ("heat", CriterionClass.Decisive, true, false, false, false),
        ("contamination", CriterionClass.Decisive, true, false, false, false),
        ("discolouration", CriterionClass.Decisive, true, true, false, false),
        ("diameter", CriterionClass.Decisive, true, false, false, false),
        ("stiffness", CriterionClass.Decisive, true, false, false, false),
        ("termination", CriterionClass.Decisive, true, true, false, false),
        ("end-stitch", CriterionClass.Decisive, true, false, true, false),
        ("severe-load", CriterionClass.Decisive, true, false, false, true),
        ("hardware-edge", CriterionClass.Decisive, true, false, false, false),
        ("marking", CriterionClass.Judged, true, true, false, false),
        ("cover-abrasion", CriterionClass.Judged, true, true, false, false),
        ("metal-deposit", CriterionClass.Advisory, false, true, true, false),
        ("pinch", CriterionClass.Advisory, false, true, true, false),
    ];

    [Fact]
    public void Rope_bridges_are_examined_by_the_agreed_list()
    {
        var bridge = Catalogue.Find("rope-bridge")!;
        Assert.Equal(MaterialFamily.Textile, bridge.Material);
        Assert.Equal(
            Agreed,
            bridge.Criteria.Select(c => (c.Id, c.Class, c.Required, c.AllowsNoted, c.AllowsNotApplicable, c.AllowsNoSign))
        );
    }
}
