using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The one description of the capture workbook, used to write it and to read it.</summary>
internal static class WorkbookShape
{
    public const string GuideName = "How to fill this in";

    /// <summary>Hidden; holds the words of long drop-down lists.</summary>
    public const string WordsName = "Words";

    /// <summary>Stands above the ids of items on the sheet of words; what follows it is offered in lists and read nowhere.</summary>
    public const string ItemIdsHeading = "ids of items";

    /// <inheritdoc cref="ItemIdsHeading"/>
    public const string FirmsHeading = "names of firms and places";

    /// <inheritdoc cref="ItemIdsHeading"/>
    public const string AddressesHeading = "addresses of firms and places";

    public const string OtherItemsName = "Other items";

    /// <summary>Sheets after the item sheets, in tab order.</summary>
    /// <param name="readings">Reading columns of the diameter sheet.</param>
    public static IReadOnlyList<SheetShape> AfterItems(int readings) =>
        [
            IdentitySheets.NotTheSame,
            ExaminationSheets.Diameters(readings),
            ExaminationSheets.Tests,
            ExaminationSheets.Defects,
            ActionSheets.Renewals,
            ActionSheets.Remedies,
            ActionSheets.Releases,
            ActionSheets.Disposals,
            ExaminationSheets.Photos,
            ExaminationSheets.EarlierExaminations,
            ExaminationSheets.EarlierObservations,
        ];

    /// <summary>Every sheet that the reader knows by itself.</summary>
    public static IReadOnlyList<SheetShape> Known { get; } = For(KnownRules.BuiltIn);

    /// <summary>Every sheet that the reader knows, with those of the categories that the user added.</summary>
    public static IReadOnlyList<SheetShape> For(KnownRules rules) =>
        ReferenceEquals(rules, KnownRules.BuiltIn) && Known is not null
            ? Known
            :
            [
                new(GuideName, SheetRole.Guide, "", []),
                new(WordsName, SheetRole.Guide, "", []),
                VisitSheet.Shape,
                IdentitySheets.People,
                LimitsSheet.Shape,
                .. rules.Categories.Select(c => Items(c, lastTime: true)),
                OtherItems,
                .. AfterItems(ExaminationSheets.MostReadings),
            ];

    /// <summary>Items of a category that the catalogue does not have; their observations stand on the observation sheet.</summary>
    public static SheetShape OtherItems =>
        new(
            OtherItemsName,
            SheetRole.Items,
            "items",
            [
                .. ItemColumns.All,
                Column.Id("category", "category", "What kind of item it is."),
                .. ExaminationColumns.Particulars,
                ExaminationColumns.Conclusion,
            ]
        )
        {
            About = "Items of other categories.",
        };

    /// <param name="category">What kind of items they are.</param>
    /// <param name="lastTime">With what was seen at the visit before beside each answer.</param>
    public static SheetShape Items(Category category, bool lastTime) =>
        new(
            category.Plural,
            SheetRole.Items,
            "items",
            [
                .. ItemColumns.All,
                .. ExaminationColumns.Particulars,
                .. ExaminationColumns.Criteria(category, lastTime),
                ExaminationColumns.Conclusion,
            ]
        )
        {
            Category = category,
            About = "One row per item, with what was examined on it.",
        };

    /// <summary>The sheet of this name; null where there is none.</summary>
    public static SheetShape? Find(string sheetName, KnownRules rules)
    {
        var name = Heading.Key(sheetName);
        return For(rules)
            .FirstOrDefault(s => s.OtherNames.Prepend(s.Name).Any(own => string.Equals(Heading.Key(own), name, StringComparison.Ordinal)));
    }
}
