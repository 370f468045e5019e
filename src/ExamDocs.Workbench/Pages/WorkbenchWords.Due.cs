namespace ExamDocs.Workbench.Pages;

/// <content>What the pages say of what falls due and of spares.</content>
public abstract partial class WorkbenchWords
{
    public abstract string Due { get; }
    public abstract string DueHow { get; }
    public abstract string DueFrom { get; }
    public abstract string DueTo { get; }
    public abstract string DueShow { get; }
    public abstract string DuePdf { get; }
    public abstract string DueWorkbook { get; }
    public abstract string DueCalendar { get; }
    public abstract string DueApart { get; }
    public abstract string DueVisits { get; }
    public abstract string DueVisitsHow { get; }
    public abstract string DueOnOrBefore { get; }
    public abstract string DueWhere { get; }
    public abstract string DueItems { get; }
    public abstract string DueStart { get; }
    public abstract string DueStartHow { get; }
    public abstract string DueList { get; }
    public abstract string DueDay { get; }
    public abstract string DueItem { get; }
    public abstract string DueCategory { get; }
    public abstract string DueToKnow { get; }
    public abstract string DueNoTimes { get; }
    public abstract string Spares { get; }
    public abstract string SparesHow { get; }
    public abstract string SparesTo { get; }
    public abstract string SparesStock { get; }
    public abstract string SparesStockHow { get; }
    public abstract string SparesOrder { get; }
    public abstract string SparesNotRecorded { get; }
    public abstract string SparesBy { get; }
    public abstract string SparesPart { get; }
    public abstract string SparesOn { get; }
    public abstract string SparesWhy { get; }
    public abstract string DueAndApart(int due, int apart);
    public abstract string DueMore(int more);
    public abstract string SparesCounted(int needed, int toOrder);
    public abstract string SparesLine(int needed, int fromStock, int toOrder);

    /// <summary>Part numbers of which any will do.</summary>
    public abstract string PartNumbers(IReadOnlyList<string> numbers);
}
