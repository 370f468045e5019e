using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheets that every capture workbook has, whatever its categories.</summary>
internal static class OtherSheets
{
    /// <summary>Readings of one station that the reader knows columns for.</summary>
    public const int MostReadings = 60;

    public static SheetShape People { get; } =
        new(
            "People",
            SheetRole.RecordList,
            "people",
            [
                Id("id", "id", "A short name for the person, used on the other sheets.") with
                {
                    IsNeeded = true,
                },
                Text("name", "name", "In full.", 24) with
                {
                    IsNeeded = true,
                },
                Text("address", "address", "Postal address.", 34),
                Text("qualifications", "qualifications", "What makes the person competent.", 30),
                Flag("self-employed", "selfEmployed", "no where the person has an employer."),
                Text("employer name", "employer/name", "Where not self-employed.", 24),
                Text("employer address", "employer/address", "Where not self-employed.", 34),
            ]
        )
        {
            About = "Everybody who examines, writes, signs, supervises or releases.",
        };

    public static SheetShape NotTheSame { get; } =
        new(
            "Not the same",
            SheetRole.ItemDetail,
            "notTheSameAs",
            [
                Id("item", "item", "Id of the item in this record.") with
                {
                    IsNeeded = true,
                },
                Id("earlier item", "id", "Id of the earlier item that it could be taken for."),
                Identity("document", "document", "Number of the document that reports on the earlier item, where there is one."),
                Text("because", "because", "How the two are told apart, for example by a marking that differs.", 40),
            ]
        )
        {
            About = "Items that could be taken for an earlier one, and are not.",
        };

    public static SheetShape Limits { get; } =
        new(
            "Limits",
            SheetRole.RecordList,
            "limits",
            [
                Text("maker", "maker", "As on the items it applies to."),
                Text("model", "model", "As on the items it applies to."),
                Identity("part number", "partNumber", "Only where the limits are for one part."),
                Text("source title", "source/title", "The maker's document.", 28),
                Text("source revision", "source/revision", "Its revision or date."),
                Text("source page", "source/page", "The page that says so."),
                Number("max use years", "maxUseYears", "Years from first use."),
                Number("max storage years", "maxStorageYears", "Years it may be stored before first use."),
                Number("max age years", "maxAgeYears", "Years from manufacture."),
                Number("max cleanings", "maxCleanings", "How often it may be cleaned."),
                Flag("event ends service", "eventEndsService", "yes where the maker retires it after any exceptional event."),
                Number("interval months", "intervalMonths", "Months between examinations."),
                Flag("no limit", "noLimit", "yes where the maker states that there is no time limit."),
                Text("instructions sought", "unobtainable/sought", "Where the instructions cannot be had: how they were sought."),
                Date("use until", "unobtainable/useUntil", "Then: the examiner's own last day of service."),
                Number("nominal diameter mm", "nominalDiameterMm", "Millimetres."),
                Number("diameter tolerance percent", "diameterTolerancePercent", "Per cent to either side."),
                List("permitted parts", "permittedParts", "Part numbers that may be fitted."),
                Number("minimum tail mm", "minTailMm", "Millimetres beyond a knot."),
                Word("re-tying", "retying", Words.Retyings.All, "Who may re-tie it."),
            ]
        )
        {
            About = "What the makers' instructions allow, with the document that says so. Nothing is assumed where nothing is recorded.",
        };

    public static SheetShape EarlierExaminations { get; } =
        new(
            "Earlier examinations",
            SheetRole.EarlierExaminations,
            "",
            [ItemId, ExaminationColumns.ExaminedOn("Needed here."), .. ExaminationColumns.WithoutDate, ExaminationColumns.Conclusion]
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
                Id("criterion", "criterion", "As in the column heading of the item's sheet."),
                Word("state", "state", Words.States.All, "What was seen."),
                Text("note", "note", "What was seen, in words.", 34),
                Text("photo", "photo", "File name of a photo.", 24),
            ]
        )
        {
            About = "What was seen at the earlier examinations.",
        };

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
                Id("criterion", "criterion", "The criterion it was found under, as in the column heading."),
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
                Id("criterion", "criterion", "As in the column heading of the item's sheet."),
                Text("photo", "photo", "File name of the photo.", 34),
            ]
        )
        {
            About = "Photos, each to an observation.",
        };

    public static SheetShape Renewals { get; } =
        new(
            "Renewals",
            SheetRole.RecordList,
            "renewals",
            [
                Id("item", "item", "Id of the item that was renewed.") with
                {
                    IsNeeded = true,
                },
                Id("removed part", "removedPart", "Id of the part taken off."),
                Id("fitted part", "fittedPart", "Id of the part fitted; empty for a removal alone."),
                Text("reason", "reason", "Why.", 28),
                Id("done by", "doneBy", "Id of the person."),
                Id("supervised by", "supervisedBy", "Id of the person."),
                Date("done on", "doneOn", "When."),
                Id("re-tied by", "retiedBy", "Id of the person; empty where the termination is as its maker tied it."),
            ]
        )
        {
            About = "Parts taken off, and what was fitted instead.",
        };

    public static SheetShape Remedies { get; } =
        new(
            "Remedies",
            SheetRole.RecordList,
            "remedies",
            [
                Id("item", "item", "Id of the item.") with
                {
                    IsNeeded = true,
                },
                Text("what", "what", "The repair or alteration made.", 34),
                Text("done by", "doneBy", "Who did it."),
                Date("done on", "doneOn", "When."),
                Text("evidence", "evidence", "What shows that it was done.", 28),
            ]
        )
        {
            About = "Repairs and alterations made.",
        };

    public static SheetShape Releases { get; } =
        new(
            "Releases",
            SheetRole.RecordList,
            "releases",
            [
                Id("item", "item", "Id of the item.") with
                {
                    IsNeeded = true,
                },
                Identity("document", "document", "Number of the document that withdrew it."),
                Date("withdrawn on", "withdrawnOn", "The day of the withdrawal, where no document is named."),
                Word(
                    "because",
                    "because",
                    Words.ReleaseReasons.All,
                    "Why it is over: made good by a renewal or remedy, examined again, or recorded in error."
                ),
                Id("by", "by", "Id of the competent person."),
                Date("on", "on", "When."),
                Text("grounds", "grounds", "Why the withdrawal is over.", 40),
            ]
        )
        {
            About = "A competent person's decisions that an earlier withdrawal is over.",
        };

    public static SheetShape Disposals { get; } =
        new(
            "Disposals",
            SheetRole.RecordList,
            "disposals",
            [
                Id("item", "item", "Id of the item.") with
                {
                    IsNeeded = true,
                },
                Word("action", "action", Words.DisposalActions.All, "What became of it."),
                Text("by", "by", "Who did it."),
                Date("on", "on", "When."),
            ]
        )
        {
            About = "What became of withdrawn items.",
        };

    private const string Today = "Left empty, the examination in the item's own row.";

    private static Column ItemId => Id("item", "item", "Id of the item, as on its own sheet.") with { IsNeeded = true };

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

    private static Column Dated(string help) => ExaminationColumns.ExaminedOn(help);
}
