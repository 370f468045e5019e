using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheet about what the makers' instructions allow.</summary>
internal static class LimitsSheet
{
    public static SheetShape Shape { get; } =
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
}
