using ExamDocs.Core.Records;
using ExamDocs.Intake.Vocabulary;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>
/// The sheet about the visit, a form: its columns stand below one another, each with its value at the right, and below them the people,
/// side by side.
/// </summary>
internal static class VisitSheet
{
    public const string ParticularHeading = "particular";

    public const string ValueHeading = "value";

    public const string HelpHeading = "what to type";

    /// <summary>Heading of the row that names the record format; it goes to the record itself.</summary>
    public const string FormatHeading = "format";

    /// <summary>Heading of the row that says in which order the dates of the workbook are typed; it goes to no record.</summary>
    public const string DateOrderHeading = "date order";

    /// <summary>Heading of the row above the people, in which each has a number.</summary>
    public const string PeopleHeading = "people";

    /// <summary>The parts of the form, each with the headings in it.</summary>
    public static IReadOnlyList<(string Title, IReadOnlyList<Column> Columns)> Sections { get; } =
    [
        (
            "For whom, where and when",
            [
                Needed(Identity("reference", "reference", "Your own reference for the visit.")),
                Needed(Id("regime", "regime", "The law that applies, for example gb-loler.") with { Offers = ColumnOffer.Regimes }),
                Needed(Text("employer name", "employer/name", "For whom the examination is made.") with { Offers = ColumnOffer.Firms }),
                Needed(Text("employer address", "employer/address", "Postal address.") with { Offers = ColumnOffer.Addresses }),
                Needed(Text("premises name", "premises/name", "Where it is made.") with { Offers = ColumnOffer.Firms }),
                Needed(Text("premises address", "premises/address", "Postal address.") with { Offers = ColumnOffer.Addresses }),
                Needed(Date("examined on", "examinedOn", "When the examination was made.")),
                Needed(Date("reported on", "reportedOn", "Date of the report.")),
            ]
        ),
        (
            "Of every item, unless its row says otherwise",
            [
                Needed(
                    Id(
                        "examiner",
                        "examiner",
                        "Id of the person who examined every item; left empty where each item's row names its own."
                    ) with
                    {
                        Offers = ColumnOffer.People,
                    }
                ),
                Needed(Word("basis", "basis", Words.Bases.All, "Why every item was examined; left empty where each item's row says it.")),
            ]
        ),
        (
            "Only where it applies",
            [
                Text("employer telephone", "employer/telephone", "Whom to ring about an item; printed on labels."),
                Text("hired from name", "hiredFrom/name", "The owner the kit is hired from, where it is.") with
                {
                    Offers = ColumnOffer.Firms,
                },
                Text("hired from address", "hiredFrom/address", "Postal address.") with
                {
                    Offers = ColumnOffer.Addresses,
                },
                Text("enforcing authority name", "enforcingAuthority/name", "Where one is known."),
                Text("enforcing authority address", "enforcingAuthority/address", "Postal address."),
                Word(
                    DateOrderHeading,
                    "dateOrder",
                    DateOrders.Words,
                    "Only where dates are typed otherwise than 2026-05-11: the order in which they are."
                ),
                Id(FormatHeading, "format", "Leave as it is."),
            ]
        ),
    ];

    /// <summary>What is asked of a person, under headings of their own.</summary>
    public static IReadOnlyList<Column> OfPerson { get; } =
    [.. IdentitySheets.People.Columns.Select(c => c with { Heading = $"person {c.Heading}" })];

    public static SheetShape Shape { get; } =
        new("Visit", SheetRole.Visit, "visit", [.. Sections.SelectMany(s => s.Columns)])
        {
            About = "For whom, where, when and under which law; and everybody who examines, writes, signs, supervises or releases.",
        };

    /// <summary>What stands above a person in the row of <see cref="PeopleHeading"/>.</summary>
    /// <param name="number">Counted from 1.</param>
    public static string Person(int number) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"person {number}");

    /// <summary>The particular of the visit that a heading means; null where it means none.</summary>
    /// <param name="key">As <see cref="Heading.Key"/> gives it.</param>
    public static Column? Find(string key) => Find(Shape.Columns, key);

    /// <inheritdoc cref="Find(string)"/>
    public static Column? FindOfPerson(string key) => Find(OfPerson, key);

    private static Column? Find(IReadOnlyList<Column> columns, string key) =>
        columns.FirstOrDefault(c => string.Equals(Heading.Key(c.Heading), key, StringComparison.Ordinal));

    private static Column Needed(Column column) => column with { IsStarred = true };
}
