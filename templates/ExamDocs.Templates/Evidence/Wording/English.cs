using ExamDocs.Core.Determination.CaseForService;
using ExamDocs.Core.Records;

namespace ExamDocs.Templates.Evidence.Wording;

/// <inheritdoc />
internal sealed class English : EvidencePhrases
{
    public override string Title => "Evidence file";

    public override string Lead =>
        "What the outcomes of this visit are based on: the case for service of each item, the measurements, and the source of "
        + "each rule. The report states the outcomes and is signed; this file is not a report.";

    public override string Employer => "Employer";
    public override string Premises => "Premises where examined";
    public override string Items => "Items";
    public override string NotInThisFile => "Not in this file, because they cannot be printed whole";
    public override string Purchased => "Date of purchase";
    public override string LastExamined => "Last examined";
    public override string Examiner => "Examiner";
    public override string Law => "Examined under";
    public override string Exposure => "Use and exposure";
    public override string ColumnRule => "Rule";
    public override string ColumnReason => "Reason for the outcome";
    public override string ColumnSource => "Source";
    public override string ColumnStep => "Step";
    public override string ColumnBearing => "Bearing";
    public override string ColumnEvidence => "Evidence";
    public override string ColumnCriterion => "Criterion";
    public override string ColumnClass => "Class";
    public override string Position => "Position, mm";
    public override string Readings => "Readings, mm";
    public override string Mean => "Mean, mm";
    public override string Uncertainty => "± 95 %, mm";
    public override string Differ => "Readings differ by, mm";
    public override string Remark => "Remark";
    public override string Series => "Series";
    public override string Points => "Examinations";
    public override string PerYear => "Change, mm a year";
    public override string Limit => "Maker's limit, mm";
    public override string ByLine => "Reached by Theil-Sen line";
    public override string ByBand => "Reached by prediction band";
    public override string Smallest => "smallest mean";
    public override string Largest => "largest mean";
    public override string SourcesHeading => "Sources";
    public override string LawHeading => "Law";
    public override string RulesHeading => "Rules that gave a reason or a finding";
    public override string LegendHeading => "How to read this file";

    public override IReadOnlyList<string> Legend { get; } =
    [
        "W rules withdraw an item, D rules set its last day of use, U rules say what the record leaves open. Other codes are "
            + "findings of the checks.",
        "Decisive criteria end an item's service when a defect is found; judged criteria are weighed with the rest; "
            + "advisory criteria note normal wear. A doubt counts as a defect.",
        "The case for service lists the evidence in the order in which it was argued. What is “on record” carries no weight by "
            + "itself.",
    ];

    public override IReadOnlyList<string> Cautions { get; } =
    ["Withdrawn items stay withdrawn whatever speaks for them here. This file supports the report of the visit and does not replace it."];

    public override string ReasonsHeading(string item) => $"{item}: reasons";

    public override string CaseHeading(string item) => $"{item}: case for service";

    public override string DiametersHeading(string item) => $"{item}: diameter along the rope";

    public override string TrendHeading(string item) => $"{item}: diameter from examination to examination";

    public override string CriteriaHeading(string category) => $"Criteria: {category}";

    public override string Step(Heading heading) =>
        heading switch
        {
            Heading.Identity => "Identity",
            Heading.History => "History",
            Heading.Decisive => "Decisive criteria",
            Heading.Judged => "Judged criteria",
            Heading.Advisory => "Advisory criteria",
            Heading.Measurements => "Measurements",
            Heading.Limits => "Limits",
            _ => "Doubts and their answers",
        };

    public override string Bearing(Bearing bearing) =>
        bearing switch
        {
            Core.Determination.CaseForService.Bearing.For => "for",
            Core.Determination.CaseForService.Bearing.Against => "against",
            Core.Determination.CaseForService.Bearing.Open => "open",
            _ => "on record",
        };

    public override string Routine(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "clear",
            ObservedState.NoSign => "nobody to ask; no sign found",
            _ => "not applicable",
        };

    protected override string Outside => "outside the maker's limits";

    protected override string StandsOut => "stands out from the rest";

    protected override string TooClose => "inside, but too close to call";
}
