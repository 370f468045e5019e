using ExamDocs.Core.Records;
using static ExamDocs.Intake.Workbook.Shape.Column;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>The sheets of what was done to items: parts renewed, repairs, releases, disposals.</summary>
internal static class ActionSheets
{
    public static SheetShape Renewals { get; } =
        new(
            "Renewals",
            SheetRole.RecordList,
            "renewals",
            [
                Id("item", "item", "Id of the item that was renewed.") with
                {
                    Offers = ColumnOffer.Items,
                    IsNeeded = true,
                },
                Id("removed part", "removedPart", "Id of the part taken off.") with
                {
                    Offers = ColumnOffer.Items,
                },
                Id("fitted part", "fittedPart", "Id of the part fitted; empty for a removal alone.") with
                {
                    Offers = ColumnOffer.Items,
                },
                Text("reason", "reason", "Why.", 28),
                Id("done by", "doneBy", "Id of the person.") with
                {
                    Offers = ColumnOffer.People,
                },
                Id("supervised by", "supervisedBy", "Id of the person.") with
                {
                    Offers = ColumnOffer.People,
                },
                Date("done on", "doneOn", "When."),
                Id("re-tied by", "retiedBy", "Id of the person; empty where the termination is as its maker tied it.") with
                {
                    Offers = ColumnOffer.People,
                },
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
                    Offers = ColumnOffer.Items,
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
                    Offers = ColumnOffer.Items,
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
                Id("by", "by", "Id of the competent person.") with
                {
                    Offers = ColumnOffer.People,
                },
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
                    Offers = ColumnOffer.Items,
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
}
