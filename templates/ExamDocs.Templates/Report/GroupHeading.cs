using ExamDocs.Core.Records;
using ExamDocs.Templates.Report.Wording;
using ExamDocs.Templates.Shared;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Items;

namespace ExamDocs.Templates.Report;

/// <summary>
/// What items in order have in common, as printed: all that stands in the heading of their group. Items with an equal heading are
/// one group.
/// </summary>
public sealed record GroupHeading
{
    internal GroupHeading(ReportItem item)
    {
        (Category, Maker, Model, PartNumber) = (item.Category, item.Item.Maker, item.Item.Model, item.Item.PartNumber);
        Load = item.ShowsLoad ? Printed.Load(item.Item.SafeWorkingLoad) : "";
        Purpose = ReportPhrases.Current.Use(item.Item.Purpose);
        (Basis, SafeToOperate, Examiner, Laws) = (item.Basis, item.SafeToOperate, item.ExaminedBy, item.Laws);
        ExaminedOn = Printed.ShortDay(item.Determined.ExaminedOn);
        Tests = item.Tests;
        Documents = item.Asks(LawAsks.Documents) ? MakersDocuments.Of(item.Determined) : "";
        Scope = item.Scope;
        Regime = item.Determined.RegimeId;
    }

    public string Category { get; }

    public string? Maker { get; }

    public string? Model { get; }

    public string? PartNumber { get; }

    /// <summary>Empty where the law asks for none and none is recorded.</summary>
    public string Load { get; }

    public string Purpose { get; }

    public string Basis { get; }

    public string SafeToOperate { get; }

    /// <summary>Empty where the examiner is the one who makes the report.</summary>
    public string Examiner { get; }

    /// <summary>Empty where the items were examined under the report's law alone.</summary>
    public string Laws { get; }

    public string ExaminedOn { get; }

    /// <summary>Empty where none is recorded.</summary>
    public string Tests { get; }

    /// <summary>Empty where the law does not ask for the maker's documents.</summary>
    public string Documents { get; }

    /// <summary>Empty where the law does not ask for it.</summary>
    public string Scope { get; }

    public string? Regime { get; }

    /// <summary>Kind, maker, model and part number in one line.</summary>
    public string Name =>
        Printed.Join(
            ReportPhrases.Current.Comma,
            Category,
            Maker is null && Model is null ? Phrases.Common.NotRecorded : Printed.Join(" ", Maker, Model),
            PartNumber
        );

    /// <summary>
    /// What stands below the name, in the order of the schedule of the law on lifting. The day examined stands beside the name.
    /// </summary>
    public IReadOnlyList<LabelledValue> Values
    {
        get
        {
            var (words, items) = (ReportPhrases.Current, ItemPhrases.Current);
            LabelledValue[] all =
            [
                new("5", items.SafeWorkingLoad, Load),
                new("", "", Purpose),
                new("", items.MakersLimits, Documents),
                new("", words.Scope, Scope),
                new("", words.Laws, Laws),
                new("", words.ExaminedBy, Examiner),
                new("7(a)", words.Basis, Basis),
                new("7(b)", words.SafeToOperate, SafeToOperate),
                new("8(a)–(c)", words.DefectsHeading, words.NoDefects),
                Tests.Length > 0 ? new("8(e)", words.Tests, Tests) : new("8(e)", "", words.NoTests),
            ];
            return [.. all.Where(v => v.Value.Length > 0)];
        }
    }

    /// <summary>Of all its texts, in characters.</summary>
    internal int Length => Name.Length + Load.Length + Basis.Length + Tests.Length + Documents.Length + Scope.Length + Laws.Length;
}
