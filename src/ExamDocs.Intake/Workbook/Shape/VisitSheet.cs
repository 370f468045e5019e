using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheet about the visit: its columns stand below one another.</summary>
internal static class VisitSheet
{
    public const string ParticularHeading = "particular";

    public const string ValueHeading = "value";

    public const string HelpHeading = "what to type";

    /// <summary>Heading of the row that names the record format; it goes to the record itself.</summary>
    public const string FormatHeading = "format";

    /// <summary>Heading of the row that says in which order the dates of the workbook are typed; it goes to no record.</summary>
    public const string DateOrderHeading = "date order";

    public static SheetShape Shape { get; } =
        new(
            "Visit",
            SheetRole.Visit,
            "visit",
            [
                Id(FormatHeading, "format", "Leave as it is."),
                Word(
                    DateOrderHeading,
                    "dateOrder",
                    DateOrders.Words,
                    "Only where dates are typed otherwise than 2026-05-11: the order in which they are."
                ),
                Identity("reference", "reference", "Your own reference for the visit."),
                Id("regime", "regime", "The law that applies, for example gb-loler.") with
                {
                    Offers = ColumnOffer.Regimes,
                },
                Text("employer name", "employer/name", "For whom the examination is made."),
                Text("employer address", "employer/address", "Postal address."),
                Text("employer telephone", "employer/telephone", "Whom to ring about an item; printed on labels. May be left empty."),
                Text("premises name", "premises/name", "Where it is made."),
                Text("premises address", "premises/address", "Postal address."),
                Text("hired from name", "hiredFrom/name", "The owner the kit is hired from, where it is."),
                Text("hired from address", "hiredFrom/address", "Postal address."),
                Text("enforcing authority name", "enforcingAuthority/name", "Where one is known."),
                Text("enforcing authority address", "enforcingAuthority/address", "Postal address."),
                Date("examined on", "examinedOn", "When the examination was made."),
                Date("reported on", "reportedOn", "Date of the report."),
                Id("examiner", "examiner", "Id of the person who examined every item; left empty where each item's row names its own.") with
                {
                    Offers = ColumnOffer.People,
                },
                Word("basis", "basis", Words.Bases.All, "Why every item was examined; left empty where each item's row says it."),
            ]
        )
        {
            About = "For whom, where, when and under which law.",
        };
}
