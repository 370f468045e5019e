using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheets that say who somebody is, and which earlier item one is not.</summary>
internal static class IdentitySheets
{
    public static SheetShape People { get; } =
        new(
            "People",
            SheetRole.RecordList,
            "people",
            [
                Id("id", "id", "A short name for the person, used on the other sheets.") with
                {
                    IsNeeded = true,
                    IsStarred = true,
                },
                Text("name", "name", "In full.", 24) with
                {
                    IsNeeded = true,
                    IsStarred = true,
                },
                Text("address", "address", "Postal address.", 34) with
                {
                    IsStarred = true,
                },
                Text("qualifications", "qualifications", "What makes the person competent.", 30) with
                {
                    IsStarred = true,
                },
                Flag("self-employed", "selfEmployed", "no where the person has an employer.") with
                {
                    IsStarred = true,
                },
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
                    Offers = ColumnOffer.Items,
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
}
