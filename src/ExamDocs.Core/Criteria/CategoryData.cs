using System.Text.Json;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Criteria;

/// <summary>Reads a category from its data file.</summary>
public static class CategoryData
{
    /// <exception cref="JsonException">Something in it is missing, unknown or of another kind.</exception>
    public static Category Read(JsonElement file) => RuleMembers.Read(file, Category);

    private static Category Category(RuleMembers members) =>
        new()
        {
            Id = members.Text("id"),
            Name = members.Text("name"),
            Plural = members.Text("plural"),
            Material = members.Word<MaterialFamily>("material"),
            Criteria = members.List("criteria", Criterion),
        };

    private static Criterion Criterion(RuleMembers members) =>
        new()
        {
            Id = members.Text("id"),
            Question = members.Text("question"),
            Means = members.Words<Means>("means"),
            Class = members.Word<CriterionClass>("class"),
            Required = members.Flag("required", otherwise: true),
            AllowsNoted = members.Flag("allowsNoted"),
            AllowsNotApplicable = members.Flag("allowsNotApplicable"),
            AllowsNoSign = members.Flag("allowsNoSign"),
            NeverReleasable = members.Flag("neverReleasable"),
            Material = members.Word<MaterialFamily>("material"),
            Source = members.Text("source"),
        };
}
