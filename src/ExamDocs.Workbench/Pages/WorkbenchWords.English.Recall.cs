using ExamDocs.Core.Recalls;

namespace ExamDocs.Workbench.Pages;

/// <content>English, for the pages that look up a maker's safety notice.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string Recall => "Recall";
        public override string RecallHow =>
            "A maker has written: take these out of use. Drop the notice as a file, or type it. Every item of the "
            + "register is then affected, not affected, or it cannot be told.";
        public override string DropNotice => "Drop the notice here (.json)";
        public override string LookThrough => "Look through the register";
        public override string TypeNotice => "Type the notice";
        public override string NoticeMaker => "Maker, as the notice names itself";
        public override string NoticeAlsoCalled => "Other names of the maker, one a line";
        public override string NoticeReference => "The maker's reference";
        public override string NoticeOn => "Day of the notice";
        public override string NoticeDemands => "What the maker demands";
        public override string NoticeReadAt => "Where you read it";
        public override string NoticeNames => "What it names";
        public override string NoticeNamesHow =>
            "All that you type has to hold; of ranges, patterns and single serial numbers one is enough. Leave empty what"
            + " the maker does not narrow the kit down by. For several kinds of kit, drop a file.";
        public override string NoticeModels => "Models, one a line";
        public override string NoticePartNumbers => "Part numbers, one a line";
        public override string NoticeSerials => "Single serial numbers, one a line";
        public override string NoticePatterns => "Patterns of serial numbers, one a line: * any, ? one character, # one digit";
        public override string NoticeBatches => "Batch numbers, one a line";
        public override string MadeFrom => "Made from, inclusive (2024-02)";
        public override string MadeTo => "Made to, inclusive";
        public override string CheckCharacters => "Characters at the end that only check the number";
        public override string NoticesBefore => "Looked up before";
        public override string TakeOut => "Take out of use";
        public override string TakeOutNow => "Issue the papers";
        public override string NothingToTakeOut => "Nothing is left to take out of use: what the notice names is out already.";
        public override string NextTakeOut => "Next: look at what is affected, then issue the papers and put the labels on.";
        public override string SweepRecord => "Download the record of the sweep";
        public override string AffectedHead => "Affected";
        public override string OpenHead => "Cannot be told";
        public override string NotAffectedHead => "Not affected";
        public override string ShowThem => "Show them";
        public override string Today => "Today";
        public override string NoItemsOnRecord => "The register has no item.";

        public override string RangeFrom(int number) => Text($"Serial numbers {number}: from, inclusive");

        public override string RangeTo(int number) => Text($"Serial numbers {number}: to, inclusive");

        public override string TakeOutHow(int withdraw, int hold) =>
            Text($"{withdraw} to withdraw, with a notice and a quarantine label each; {hold} to hold, with a hold label each. ")
            + "It is recorded that nobody has looked at them, and that you take them out because the maker demands it.";

        public override string RecallIs(RecallVerdict verdict) =>
            verdict switch
            {
                RecallVerdict.Affected => "AFFECTED: DO NOT USE",
                RecallVerdict.CannotTell => "CANNOT TELL: DO NOT USE until somebody has looked",
                _ => "not affected",
            };
    }
}
