using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Workbook.Shape;

/// <summary>What is recorded about an examination.</summary>
internal static class ExaminationColumns
{
    /// <summary>In the row of the item that was examined.</summary>
    public static IReadOnlyList<Column> Particulars { get; } = [.. Before, ExaminedOn("Left empty, the visit's date counts."), .. After];

    /// <summary>On the sheet of earlier examinations, after item and date.</summary>
    public static IEnumerable<Column> WithoutDate => [.. Before, .. After];

    public static Column Conclusion { get; } =
        Column.Word("conclusion", "conclusion", Words.Conclusions.All, "The examiner's own conclusion.") with
        {
            Group = ColumnGroup.Conclusion,
            IsNeeded = true,
            IsUsual = true,
            IsStarred = true,
        };

    private static IEnumerable<Column> Before =>
        InGroup(
            Column.Id("examiner", "examiner", "Id of the person who examined it.") with
            {
                Offers = ColumnOffer.People,
            },
            Column.Id("author", "author", "Id of the person who writes the report; left empty, the examiner.") with
            {
                Offers = ColumnOffer.People,
            },
            Column.Id("authenticated by", "authenticatedBy", "Id of the person who signs; left empty, the examiner.") with
            {
                Offers = ColumnOffer.People,
            },
            Column.Id("regime", "regime", "The law that applies, where it is not the visit's.") with
            {
                Offers = ColumnOffer.Regimes,
            },
            Column.Word("basis", "basis", Words.Bases.All, "Why it was examined."),
            Column.Identity("scheme reference", "scheme/reference", "Where an examination scheme applies: its reference."),
            Column.Text("scheme author", "scheme/author", "Who drew the scheme up."),
            Column.Number("scheme months", "scheme/months", "The scheme's interval in whole months."),
            Column.Text("event", "event/what", "The exceptional circumstance that called for the examination."),
            Column.Date("event on", "event/on", "When that was.")
        );

    private static IEnumerable<Column> After =>
        InGroup(
            Column.Date("next by", "nextBy", "An earlier latest date for the next examination, where the examiner sets one."),
            Column.Text("hardware", "exposure/hardware", "What it runs on or bears against."),
            Column.Text("ground", "exposure/ground", "What it works in, for example sandy."),
            Column.Number("user mass kg", "exposure/userMassKg", "The user with all kit, kilograms."),
            Column.Text("use", "exposure/use", "How often it is used, for example daily.")
        );

    public static Column ExaminedOn(string help) =>
        Column.Date("examined on", "examinedOn", "When it was examined. " + help) with
        {
            Group = ColumnGroup.Examination,
        };

    /// <summary>A column for the state and one for the note, for each criterion of the category.</summary>
    /// <param name="category">The category.</param>
    /// <param name="lastTime">Before them also one that shows what was seen last time.</param>
    public static IEnumerable<Column> Criteria(Category category, bool lastTime)
    {
        foreach (var criterion in category.Criteria)
        {
            if (lastTime)
                yield return LastTime(criterion);
            var states = Words.States.All.Where(word => criterion.Allows(Words.States.Find(word)!.Value)).ToList();
            yield return new Column(criterion.Id, criterion.Id, ColumnKind.Text, Help(criterion, states))
            {
                Group = ColumnGroup.Criterion,
                IsNeeded = criterion.Required,
                IsUsual = criterion.Required,
                IsStarred = criterion.Required,
                Words = states,
                Width = 14,
            };
            yield return new Column(
                $"{criterion.Id} note",
                criterion.Id,
                ColumnKind.Text,
                $"What was seen for {criterion.Id}. Needed with noted, doubt and defect."
            )
            {
                Group = ColumnGroup.CriterionNote,
                IsUsual = criterion.Required,
                Width = 22,
            };
        }
    }

    private static Column LastTime(Criterion criterion) =>
        new(
            $"{criterion.Id} last time",
            criterion.Id,
            ColumnKind.Text,
            $"What was seen for {criterion.Id} at the last examination. For you to compare with; nothing here is read."
        )
        {
            Group = ColumnGroup.LastTime,
            IsUsual = criterion.Required,
            Width = 18,
        };

    private static string Help(Criterion criterion, IEnumerable<string> states)
    {
        var weight = criterion.Class switch
        {
            CriterionClass.Decisive => "Decisive: a defect ends the item's service.",
            CriterionClass.Judged => "Judged with the rest.",
            _ => "Advisory: wear to be noted.",
        };
        var needed = criterion.Required ? "An answer is needed." : "May be left empty.";
        return $"{criterion.Question} {weight} {needed} Allowed: {string.Join(", ", states)}.";
    }

    private static IEnumerable<Column> InGroup(params Column[] columns) => columns.Select(c => c with { Group = ColumnGroup.Examination });
}
