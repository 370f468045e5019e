using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheets of what belongs to an examination and does not fit into the item's row.</summary>
internal static class ExaminationSheets
{
    /// <summary>Readings of one station that the reader knows columns for.</summary>
    public const int MostReadings = 60;

    public static SheetShape Tests { get; } =
        new(
            "Tests",
            SheetRole.ExaminationDetail,
            "tests",
            [
                ItemId,
                Dated(Today),
                Text("description", "description", "What was tested, and how.", 34),
                Text("result", "result", "What came out.", 34),
            ]
        )
        {
            About = "Tests made as part of an examination.",
        };

    public static SheetShape Defects { get; } =
        new(
            "Defects",
            SheetRole.ExaminationDetail,
            "defects",
            [
                ItemId,
                Dated(Today),
                Id("criterion", "criterion", "The criterion it was found under, as in the column heading.") with
                {
                    Offers = ColumnOffer.Criteria,
                },
                Text("part", "part", "The part that is defective."),
                Text("description", "description", "The defect.", 34),
                Word("danger", "danger", Words.Dangers.All, "now: it is a danger to persons. later: it could become one."),
                Date("becomes danger on", "becomesDangerOn", "For later: when it could become a danger."),
                Text("remedy", "remedy", "Repair, renewal or alteration needed.", 28),
                Flag("imminent risk", "imminentRisk", "yes where there is a risk of serious personal injury now."),
                Text("notified whom", "notified/whom", "Who was told."),
                Text("notified how", "notified/how", "By what means."),
                Date("notified on", "notified/on", "When."),
            ]
        )
        {
            About = "Defects that are, or could become, a danger to persons.",
        };

    public static SheetShape Photos { get; } =
        new(
            "Photos",
            SheetRole.Photos,
            "observations",
            [
                ItemId,
                Dated(Today),
                Id("criterion", "criterion", "As in the column heading of the item's sheet.") with
                {
                    Offers = ColumnOffer.Criteria,
                },
                Text("photo", "photo", "File name of the photo.", 34),
            ]
        )
        {
            About = "Photos, each to an observation.",
        };

    public static SheetShape EarlierExaminations { get; } =
        new(
            "Earlier examinations",
            SheetRole.EarlierExaminations,
            "",
            [
                ItemId,
                ExaminationColumns.ExaminedOn("Needed here."),
                .. ExaminationColumns.WithoutDate,
                ExaminationColumns.Conclusion with
                {
                    IsStarred = false,
                },
            ]
        )
        {
            About = "Examinations before this visit.",
        };

    public static SheetShape EarlierObservations { get; } =
        new(
            "Earlier observations",
            SheetRole.EarlierObservations,
            "observations",
            [
                ItemId,
                Dated("Needed here: the date of the earlier examination."),
                Id("criterion", "criterion", "As in the column heading of the item's sheet.") with
                {
                    Offers = ColumnOffer.Criteria,
                },
                Word("state", "state", Words.States.All, "What was seen."),
                Text("note", "note", "What was seen, in words.", 34),
                Text("photo", "photo", "File name of a photo.", 24),
            ]
        )
        {
            About = "What was seen at the earlier examinations.",
        };

    /// <param name="readings">Reading columns, at least one.</param>
    public static SheetShape Diameters(int readings) =>
        new(
            "Diameters",
            SheetRole.ExaminationDetail,
            "diameters",
            [
                ItemId,
                Dated(Today),
                Number("position mm", "positionMm", "Millimetres from the reference end."),
                .. Enumerable
                    .Range(1, readings)
                    .Select(n => new Column(
                        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"reading {n}"),
                        "readingsMm",
                        ColumnKind.NumberInList,
                        "Millimetres; usually two readings at right angles."
                    )
                    {
                        Width = 11,
                    }),
            ]
        )
        {
            About = "Rope diameters, one row per place measured.",
        };

    private const string Today = "Left empty, the examination in the item's own row.";

    private static Column ItemId =>
        Id("item", "item", "Id of the item, as on its own sheet.") with
        {
            Offers = ColumnOffer.Items,
            IsNeeded = true,
        };

    private static Column Dated(string help) => ExaminationColumns.ExaminedOn(help);
}
