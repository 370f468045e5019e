using ExamDocs.Core.Recalls;

namespace ExamDocs.Workbench.Pages;

/// <content>What the pages say that look up a maker's safety notice.</content>
public abstract partial class WorkbenchWords
{
    public abstract string Recall { get; }
    public abstract string RecallHow { get; }
    public abstract string DropNotice { get; }
    public abstract string LookThrough { get; }
    public abstract string TypeNotice { get; }
    public abstract string NoticeMaker { get; }
    public abstract string NoticeAlsoCalled { get; }
    public abstract string NoticeReference { get; }
    public abstract string NoticeOn { get; }
    public abstract string NoticeDemands { get; }
    public abstract string NoticeReadAt { get; }
    public abstract string NoticeNames { get; }
    public abstract string NoticeNamesHow { get; }
    public abstract string NoticeModels { get; }
    public abstract string NoticePartNumbers { get; }
    public abstract string NoticeSerials { get; }
    public abstract string NoticePatterns { get; }
    public abstract string NoticeBatches { get; }
    public abstract string MadeFrom { get; }
    public abstract string MadeTo { get; }
    public abstract string CheckCharacters { get; }
    public abstract string NoticesBefore { get; }
    public abstract string TakeOut { get; }
    public abstract string TakeOutNow { get; }
    public abstract string NothingToTakeOut { get; }
    public abstract string NextTakeOut { get; }
    public abstract string SweepRecord { get; }
    public abstract string AffectedHead { get; }
    public abstract string OpenHead { get; }
    public abstract string NotAffectedHead { get; }
    public abstract string ShowThem { get; }
    public abstract string Today { get; }
    public abstract string NoItemsOnRecord { get; }

    public abstract string RangeFrom(int number);
    public abstract string RangeTo(int number);
    public abstract string TakeOutHow(int withdraw, int hold);
    public abstract string RecallIs(RecallVerdict verdict);
}
