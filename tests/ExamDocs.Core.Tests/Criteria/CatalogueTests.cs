using System.Text.Json;
using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Tests.Criteria;

/// <summary>What must be true of every category, also of those still to be added.</summary>
public sealed class CatalogueTests
{
    /// <summary>Characters that a worksheet name may not contain (from memory of the programs that read them).</summary>
    private const string ForbiddenInSheetNames = @"[]:*?/\";

    public static TheoryData<string> Categories => [.. Catalogue.All.Select(c => c.Id)];

    [Fact]
    public void Every_index_line_has_a_data_file_and_every_data_file_an_index_line()
    {
        Assert.Equal(Catalogue.IndexLines.Order(StringComparer.Ordinal), Catalogue.DataFiles.Order(StringComparer.Ordinal));
        Assert.Equal(16, Catalogue.All.Count);
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Criteria_are_at_least_eight_with_ids_of_their_own(string id)
    {
        var criteria = Of(id).Criteria;
        Assert.True(criteria.Count >= 8, $"{id} has {criteria.Count} criteria");
        Assert.Equal(criteria.Count, criteria.Select(c => c.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(criteria, c => Assert.Matches("^[a-z]+(-[a-z]+)*$", c.Id));
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Decisive_criteria_come_first_then_judged_then_advisory(string id)
    {
        var classes = Of(id).Criteria.Select(c => c.Class).ToList();
        Assert.Equal(classes.Order(), classes);
        Assert.Equal(3, classes.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void No_sign_is_allowed_only_where_the_means_is_to_ask(string id) =>
        Assert.All(Of(id).Criteria.Where(c => c.AllowsNoSign), c => Assert.Contains(Means.Ask, c.Means));

    [Theory]
    [MemberData(nameof(Categories))]
    public void Noted_is_allowed_on_every_judged_and_advisory_criterion(string id) =>
        Assert.All(Of(id).Criteria.Where(c => c.Class is not CriterionClass.Decisive), c =>
            Assert.True(c.Allows(ObservedState.Noted), c.Id)
        );

    [Theory]
    [MemberData(nameof(Categories))]
    public void Decisive_and_judged_criteria_are_required(string id) =>
        Assert.All(Of(id).Criteria.Where(c => c.Class is not CriterionClass.Advisory), c => Assert.True(c.Required, c.Id));

    [Theory]
    [MemberData(nameof(Categories))]
    public void Every_criterion_has_a_question_its_means_and_a_source(string id) => Assert.All(Of(id).Criteria, c =>
        {
            Assert.Matches(@"^[A-Z][^?]*\?( [A-Z][^?]*\.)?$", c.Question);
            Assert.NotEmpty(c.Means);
            Assert.Equal(c.Means.Count, c.Means.Distinct().Count());
            Assert.False(string.IsNullOrWhiteSpace(c.Source), c.Id);
        });

    [Theory]
    [MemberData(nameof(Categories))]
    public void The_plural_can_name_a_worksheet(string id)
    {
        var plural = Of(id).Plural;
        Assert.InRange(plural.Length, 1, 31);
        Assert.DoesNotContain(plural, c => ForbiddenInSheetNames.Contains(c, StringComparison.Ordinal));
        Assert.False(plural.StartsWith('\'') || plural.EndsWith('\''), plural);
        Assert.Single(Catalogue.All, c => string.Equals(c.Plural, plural, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Identity_marking_and_severe_loading_are_asked_of_every_category(string id)
    {
        var identity = Find(id, "identity");
        Assert.Equal((CriterionClass.Decisive, true), (identity.Class, identity.AllowsNoted));
        Assert.Equal(CriterionClass.Judged, Find(id, "marking").Class);
        AssertNeverReleasable(Find(id, "severe-load"));
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Saw_contact_is_asked_of_all_kit_whose_fibres_bear_load(string id)
    {
        if (Of(id).Criteria.All(c => c.Material is not MaterialFamily.Textile))
        {
            Assert.Null(Of(id).Find("saw-contact"));
            return;
        }

        AssertNeverReleasable(Find(id, "saw-contact"));
    }

    [Theory]
    [MemberData(nameof(Categories))]
    public void Only_saw_contact_and_severe_loading_can_never_be_released(string id) =>
        Assert.All(Of(id).Criteria, c => Assert.Equal(c.Id is "saw-contact" or "severe-load", c.NeverReleasable));

    [Fact]
    public void The_catalogue_as_JSON_has_every_criterion_with_its_flags()
    {
        using var document = JsonDocument.Parse(Catalogue.ToJson());
        var written = document.RootElement.EnumerateArray().SelectMany(c => c.GetProperty("criteria").EnumerateArray()).ToList();
        Assert.Equal(Catalogue.All.Sum(c => c.Criteria.Count), written.Count);
        Assert.All(written, c => Assert.True(c.TryGetProperty("allowsNotApplicable", out _)));
    }

    private static void AssertNeverReleasable(Criterion criterion)
    {
        Assert.Equal(CriterionClass.Decisive, criterion.Class);
        Assert.Contains(Means.Ask, criterion.Means);
        Assert.True(criterion.AllowsNoSign);
        Assert.True(criterion.NeverReleasable);
    }

    private static Category Of(string id) => Catalogue.Find(id)!;

    private static Criterion Find(string category, string criterion) =>
        Of(category).Find(criterion) ?? throw new InvalidOperationException($"{category} does not ask about {criterion}");
}
