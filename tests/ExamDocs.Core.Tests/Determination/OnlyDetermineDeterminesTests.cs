using System.Reflection;
using ExamDocs.Core.Determination;

namespace ExamDocs.Core.Tests.Determination;

/// <summary>
/// Documents are composed only from determined items, and only the determination can make or change one: there is no public
/// constructor, no copy with another outcome, no default value, no subclass.
/// </summary>
public sealed class OnlyDetermineDeterminesTests
{
    [Theory]
    [InlineData(typeof(DeterminedItem))]
    [InlineData(typeof(DeterminedVisit))]
    public void Only_the_determination_can_make_what_has_an_outcome(Type type) => Assert.Empty(WaysAround(type));

    [Theory]
    [InlineData(typeof(PlantedRecord), "is a record")]
    [InlineData(typeof(PlantedOpen), "is not sealed; has a public constructor; Outcome can be set; Until can be written")]
    [InlineData(typeof(PlantedStruct), "is no class")]
    public void A_planted_type_that_leaves_a_way_around_is_named(Type type, string told) =>
        Assert.Equal(told, string.Join("; ", WaysAround(type)));

    private static IEnumerable<string> WaysAround(Type type)
    {
        const BindingFlags Own = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;
        if (!type.IsClass)
            yield return "is no class";
        if (!type.IsSealed)
            yield return "is not sealed";
        if (type.GetMethod("<Clone>$", Own) is not null)
            yield return "is a record";
        if (type.GetConstructors(Own).Any(c => c.IsPublic || c.IsFamily || c.IsFamilyOrAssembly))
            yield return "has a public constructor";
        foreach (var property in type.GetProperties(Own).Where(p => p.SetMethod is not null && !IsOfRecord(type)))
            yield return $"{property.Name} can be set";
        foreach (var field in type.GetFields(Own).Where(f => !f.IsInitOnly && !f.Name.StartsWith('<')))
            yield return $"{field.Name} can be written";
    }

    private static bool IsOfRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    internal sealed record PlantedRecord
    {
        private PlantedRecord(int outcome) => Outcome = outcome;

        public int Outcome { get; init; }
    }

    internal class PlantedOpen
    {
        public int Until = 1;

        public int Outcome { get; set; }
    }

    internal readonly struct PlantedStruct;
}
