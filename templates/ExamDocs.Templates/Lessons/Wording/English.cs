using System.Globalization;

namespace ExamDocs.Templates.Lessons.Wording;

/// <inheritdoc />
internal sealed class English : LessonsPhrases
{
    public override string Title => "What the records teach";
    public override string Lead => "Counted from the examinations in one register. It is no report and has no number.";
    public override string Whose => "Whose kit";
    public override string Everybody => "everybody's in the register";
    public override string Counted => "Counted";

    public override string VisitsAndItems(int visits, int items) => $"visits: {N(visits)}, items: {N(items)}";

    public override string Period => "Examined";
    public override string ThisRegisterOnly =>
        "These numbers are of this register only. They decide on no item, and they set no limit: an item is fit or withdrawn "
        + "by its own examination.";

    public override string RatesHeading => "How many are withdrawn";

    public override string RatesLead(int least) =>
        "Items whose service ended with a withdrawal for wear or a defect, of all items examined. What expired, was lost, or "
        + "was withdrawn because of a part counts as not withdrawn. The bar is the 95 % interval (Wilson): where two bars "
        + "overlap widely, "
        + $"the difference may be chance. Groups of fewer than {N(least)} are shown without a bar.";

    public override string Group => "Group";
    public override string Items => "Items";
    public override string Withdrawn => "Withdrawn";
    public override string Share => "Share";
    public override string Interval => "95 % interval";
    public override string TooFew => "too few to compare";

    public override string TooFewToCompare(int least) => $"Too few to compare: fewer than two groups have {N(least)} items or more.";

    public override string MoreInWorkbook(int groups) => $"The workbook has {N(groups)} more groups.";

    public override string By(GroupedBy by) =>
        by switch
        {
            GroupedBy.Everything => "All rope bridges",
            GroupedBy.Category => "Category",
            GroupedBy.Model => "Model",
            GroupedBy.Hardware => "Hardware on the bridge",
            GroupedBy.Ground => "Ground on which the bridge is used",
            _ => "Age at the examination",
        };

    public override string Years(string span) => $"{span} years";

    public override string SurvivalHeading => "How long rope bridges last";
    public override string SurvivalLead =>
        "The share of rope bridges not yet withdrawn for wear or a defect, by months since first use (Kaplan-Meier; "
        + "Greenwood's error, log-log interval, 95 %). A small upright line marks bridges that were still in service at their "
        + "last examination, or left it for another reason. The line is thin where fewer than ten are still watched: there one "
        + "bridge moves it far. A withdrawal counts on the day on which it was found: the wear is older.";
    public override string NoBridges => "The register has no rope bridge whose first use is known and that was examined after it.";

    public override string LeftOut(int bridges) =>
        $"Left out: {N(bridges)} rope bridges whose first use is not known, or that were not watched for any time.";

    public override string ManyComparisons =>
        "Against the others: how often bridges that are all alike would differ as much by chance (log-rank test). Of twenty "
        + "such comparisons about one is below 0.05 by chance alone. Users, ground and hardware go together: a difference is no "
        + "proof of its cause.";
    public override string AllBridges => "All";
    public override string Bridges => "Bridges";
    public override string Median => "Half are left until, months (95 %)";

    public override string LeftAfter(int months) => $"Left after {N(months)} months (95 %)";

    public override string PerHundredYears => "Withdrawn per 100 bridge-years (95 %, exact)";
    public override string AgainstOthers => "Against the others, p";
    public override string NotReached => "not reached";

    public override string OnlyAtRisk(int bridges) => $"only {N(bridges)} still watched then";

    public override string MonthsOfUse => "Months since first use";

    public override string PlotTitle(string by) => $"Share of rope bridges left by months since first use. {by}";

    public override string WearHeading => "How fast rope bridges get thinner";
    public override string WearLead =>
        "Millimetres of diameter a month at the thinnest place, for bridges measured on three days or more (slope of Theil and "
        + "Sen). Each ring is a bridge, the box holds the middle half. Below zero a bridge got thicker.";
    public override string MedianWear => "Median, mm a month";
    public override string MiddleHalf => "Middle half, mm a month";

    public override string ReasonsHeading => "Why they are withdrawn";
    public override string ReasonsLead =>
        "Criteria with a defect or a doubt at the examination that ended the service. An item may have several.";
    public override string NoReasons => "No item was withdrawn for wear or a defect.";
    public override string Criterion => "Criterion";

    public override string AgreementHeading => "Do two examiners see the same?";
    public override string AgreementLead =>
        "Items that two examiners looked at within 31 days: did both see something against a criterion, or neither? A low "
        + "kappa is a reason to look at some items together and to agree what counts as noted. It says nothing of who is right, "
        + "and is no measure of anybody's work: that is why no names are here. Criteria on which every answer was the same are "
        + "left out.";
    public override string NoPairs =>
        "No item was examined by two examiners within 31 days. To learn how well you agree, let a colleague examine some items "
        + "once more.";
    public override string AllTogether => "All together";
    public override string Pairs => "Pairs";
    public override string Alike => "Said the same";
    public override string Kappa => "Kappa";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "Few numbers are no proof. Kit that is used harder is withdrawn sooner: compare only what is used alike.",
        "No number here shortens or lengthens a life that the maker states, or an interval that the law sets.",
        "An item is followed by its id and owner. One that got another id counts twice.",
    ];

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
