using System.Globalization;
using ExamDocs.UseCases.Issuing;

namespace ExamDocs.Workbench.Pages;

/// <content>What the pages say of all the kit on record, of audit packs, and of work that takes its time.</content>
public abstract partial class WorkbenchWords
{
    public abstract string AllKit { get; }
    public abstract string AllKitHow { get; }
    public abstract string Pack { get; }
    public abstract string PackHow { get; }
    public abstract string PackAsOf { get; }
    public abstract string PackAsOfHow { get; }
    public abstract string PackPremises { get; }
    public abstract string PackItems { get; }
    public abstract string PackAllOfThem { get; }
    public abstract string PackEvidence { get; }
    public abstract string PackEvidenceHow { get; }
    public abstract string PackLanguage { get; }
    public abstract string PackMake { get; }
    public abstract string PacksBefore { get; }
    public abstract string PackStop { get; }
    public abstract string PackNothingKept { get; }
    public abstract string PackGaps { get; }
    public abstract string PackNoGaps { get; }
    public abstract string PackFiles { get; }
    public abstract string PackSaveZip { get; }
    public abstract string PackSaveCopy { get; }
    public abstract string PackKept { get; }
    public abstract string PackRemove { get; }
    public abstract string HowFar { get; }
    public abstract string Waiting { get; }
    public abstract string StoppedAsAsked { get; }
    public abstract string PackCounted(int items, int documents, int gaps);
    public abstract string PackMoreGaps(int more);
    public abstract string PackNext(int gaps);

    /// <summary>The pages that look at all the kit on record, each with what it is for.</summary>
    public IReadOnlyList<(string Path, string Name, string How)> AllKitPages =>
        [
            ("/due", Due, DueHow),
            ("/spares", Spares, SparesHow),
            ("/recall", Recall, RecallHow),
            ("/pack", Pack, PackHow),
            ("/lessons", Lessons, LessonsHow),
        ];

    /// <summary>How far long work is; null while it waits for other work.</summary>
    public string AtWork(RunProgress? progress) =>
        progress is null ? Waiting
        : Say(progress.Said) is var said ? char.ToUpper(said[0], CultureInfo.InvariantCulture) + said[1..] + "."
        : "";

    /// <summary>Why long work came to an end.</summary>
    public string WhyStopped(string failure) =>
        string.Equals(failure, RunFailure.ByUser, StringComparison.Ordinal) ? StoppedAsAsked : Stopped(failure);
}
