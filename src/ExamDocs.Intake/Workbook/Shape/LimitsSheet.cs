using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheet of models: what all items of one share, and what its maker's instructions allow.</summary>
internal static class LimitsSheet
{
    public static SheetShape Shape { get; } =
        new(
            "Models",
            SheetRole.RecordList,
            "limits",
            [
                Text("maker", "maker", "As on the items it applies to.") with
                {
                    IsStarred = true,
                },
                Text("model", "model", "As on the items it applies to.") with
                {
                    IsStarred = true,
                },
                Identity("part number", "partNumber", "Only where the limits are for one part."),
                Text("description", "description", "What every item of the model is; an item's own words come first.", 28) with
                {
                    IsStarred = true,
                },
                Number("safe working load", "safeWorkingLoad/value", "The number marked on every item of the model."),
                Word("safe working load unit", "safeWorkingLoad/unit", Words.LoadUnits, "The unit marked with it."),
                Flag("safe working load not marked", "safeWorkingLoad/notMarked", "yes where the model bears none."),
                Text("safe working load basis", "safeWorkingLoad/basis", "Where the load was taken from, if the model bears none."),
                Text("source title", "source/title", "The maker's document.", 28) with
                {
                    IsStarred = true,
                },
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
                Number("marked strength", "markedStrength/value", "The number marked on every item of the model."),
                Word("marked strength unit", "markedStrength/unit", Words.LoadUnits, "The unit marked with it."),
                Flag("marked strength not marked", "markedStrength/notMarked", "yes where the model bears none."),
                Text("marked strength basis", "markedStrength/basis", "Where the strength was taken from, if the model bears none."),
                List("standards", "standards", "Standards marked on every item of the model, for example EN 358."),
            ]
        )
        {
            OtherNames = ["Limits"],
            About =
                "What every item of a model shares, typed once: what it is, the load marked on it, and what its maker's instructions "
                + "allow, with the document that says so. No limit is assumed where none is recorded.",
        };
}
