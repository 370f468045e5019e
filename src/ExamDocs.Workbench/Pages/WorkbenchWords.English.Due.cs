namespace ExamDocs.Workbench.Pages;

/// <content>English, for what falls due and for spares.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string Due => "What falls due";
        public override string DueHow =>
            "What has to be examined from one day to another, by the decisions on record today. This page " + "decides nothing.";
        public override string DueFrom => "From, inclusive";
        public override string DueTo => "To, inclusive";
        public override string DueShow => "Show";
        public override string DuePdf => "The plan as a PDF";
        public override string DueWorkbook => "A workbook";
        public override string DueCalendar => "A calendar file";
        public override string DueApart => "Not to be used";
        public override string DueVisits => "Visits proposed";
        public override string DueVisitsHow => "Each on its day or before it. Public holidays and weekends are not looked at.";
        public override string DueOnOrBefore => "On or before";
        public override string DueWhere => "Where";
        public override string DueItems => "Items";
        public override string DueStart => "Start a visit of these";
        public override string DueStartHow => "It takes in what is due up to the last day, with what is overdue.";
        public override string DueList => "Item by item";
        public override string DueDay => "Falls due";
        public override string DueItem => "Item";
        public override string DueCategory => "Category";
        public override string DueToKnow => "To be known";
        public override string DueNoTimes => "Records hold no times of day, so how long past visits took cannot be measured from them.";
        public override string Spares => "Spares";
        public override string SparesHow =>
            "Parts that have to be replaced by a day: withdrawn and still fitted, at the end of their service, "
            + "or projected to wear out. A projection is a proposal; no limit is made of it.";
        public override string SparesTo => "Up to, inclusive";
        public override string SparesStock => "What is in stock";
        public override string SparesStockHow => "A workbook or .csv with a column ‘part number’ and a column ‘quantity’. It is only read.";
        public override string SparesOrder => "The order as a workbook";
        public override string SparesNotRecorded => "No permitted part number is recorded: ask the maker";
        public override string SparesBy => "Needed by";
        public override string SparesPart => "Part";
        public override string SparesOn => "Fitted to";
        public override string SparesWhy => "Why";

        public override string DueAndApart(int due, int apart) => Text($"To be examined: {due}; not to be used: {apart}");

        public override string DueMore(int more) => Text($"{more} more are in the workbook.");

        public override string SparesCounted(int needed, int toOrder) => Text($"Parts to replace: {needed}; to order: {toOrder}");

        public override string SparesLine(int needed, int fromStock, int toOrder) =>
            Text($"Needed: {needed}; from stock: {fromStock}; to order: {toOrder}");

        public override string PartNumbers(IReadOnlyList<string> numbers) => string.Join(" or ", numbers);
    }
}
