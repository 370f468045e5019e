using ExamDocs.UseCases.Recording;

namespace ExamDocs.Workbench.Pages;

/// <content>English, about what was done to an item.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string EntriesOf(string list) =>
            list switch
            {
                PeopleRows.List => "Further people",
                ItemRows.Tests => "Tests made",
                ItemRows.Renewals => "Parts renewed",
                ItemRows.Remedies => "Repairs and alterations",
                ItemRows.Releases => "Releases from a withdrawal",
                _ => "Disposal",
            };

        public override string EntriesHow(string list) =>
            list switch
            {
                PeopleRows.List => "Whoever did or supervised what is recorded here, besides the examiner: to be picked on the pages of "
                    + "the items.",
                ItemRows.Tests => "The tests made at this examination, and their results.",
                ItemRows.Renewals =>
                    "Parts taken off this item, and what was fitted instead. The part fitted is an item of this visit, and its own "
                        + "page says that it is fitted to this one. A competent person who did the work is named as supervisor too.",
                ItemRows.Remedies => "Repairs made to this item, and alterations of it.",
                ItemRows.Releases =>
                    "A competent person's decisions that an earlier withdrawal of this item is over. Name the document that "
                        + "withdrew it, or the day. Where nothing says why it is over, it counts as made good if a renewal or repair of "
                        + "the item is on record, else as examined again.",
                _ => "What became of this item after it was withdrawn.",
            };

        public override string AddEntry(string list) =>
            list switch
            {
                PeopleRows.List => "Add a person",
                ItemRows.Tests => "Add a test",
                ItemRows.Renewals => "Add a renewal",
                ItemRows.Remedies => "Add a repair",
                ItemRows.Releases => "Add a release",
                _ => "Add a disposal",
            };

        public override string RowCalled(string list, int number) =>
            list switch
            {
                PeopleRows.List => Text($"Person {number}"),
                ItemRows.Tests => Text($"Test {number}"),
                ItemRows.Renewals => Text($"Renewal {number}"),
                ItemRows.Remedies => Text($"Repair {number}"),
                ItemRows.Releases => Text($"Release {number}"),
                _ => Text($"Disposal {number}"),
            };

        public override string TakeRowOff(string row) => $"Take off: {row}";

        public override string RowMember(string list, string member) =>
            $"{list}/{member}" switch
            {
                "tests/description" => "What was tested",
                "tests/result" => "Result",
                "renewals/removedPart" => "Part taken off",
                "renewals/fittedPart" => "Part fitted",
                "renewals/reason" => "Reason",
                "renewals/doneBy" or "remedies/doneBy" or "disposals/by" => "Done by",
                "renewals/supervisedBy" => "Supervised by",
                "renewals/doneOn" or "remedies/doneOn" or "disposals/on" => "Done on",
                "renewals/retiedBy" => "Re-tied by (where it was)",
                "remedies/what" => "What was done",
                "remedies/evidence" => "What shows that it was done",
                "releases/document" => "Document that withdrew it",
                "releases/withdrawnOn" => "Withdrawn on",
                "releases/because" => "Why it is over",
                "releases/by" => "Released by",
                "releases/on" => "Released on",
                "releases/grounds" => "Grounds",
                "disposals/action" => "What became of it",
                "people/name" => "Name",
                "people/address" => "Address",
                "people/qualifications" => "Qualifications",
                "people/selfEmployed" => "Self-employed?",
                "people/employer/name" => "Employer",
                "people/employer/address" => "Employer's address",
                _ => member,
            };

        protected override IReadOnlyList<(string Value, string Label)>? ChoicesOfRow(string name) =>
            name switch
            {
                "releases/because" =>
                [
                    ("made-good", "made good by a renewal or repair"),
                    ("examined-again", "examined again"),
                    ("recorded-in-error", "recorded in error"),
                ],
                "disposals/action" => [("quarantined", "quarantined"), ("sent for repair", "sent for repair"), ("destroyed", "destroyed")],
                _ => null,
            };
    }
}
