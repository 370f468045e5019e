namespace ExamDocs.Templates.FirstVisit.Wording;

/// <inheritdoc />
internal sealed class English : FirstVisitPhrases
{
    public override string Title => "Check sheets for a first visit";
    public override string Lead =>
        "To record an examination by hand where no earlier record is at hand. They are no report and have no " + "number.";
    public override string HowToWrite =>
        "A star marks what an item needs to come out fit, or a report to be made. Write dates as year-month-day: "
        + "2026-05-11. Where only the month or the year is known, write that. Leave empty what nobody knows; an "
        + "empty line is a missing value and no answer.";
    public override string Visit => "Visit";
    public override string Examiner => "Examiner";
    public override string OtherPerson => "Somebody else who signs or supervises";
    public override string Models => "Models: what all items of one share";
    public override string HowToModels =>
        "One block for each model. Write only what its maker’s instructions say, with the document, revision and "
        + "page. No limit is assumed where none is written; textile kit without one stays undetermined.";
    public override string OneBox =>
        "One box in each line; an open line is no answer. Noted, doubt and defect need a note. In doubt, tick " + "doubt.";
    public override string HowToMeasure => "Two readings at each place, at right angles; places in mm from an end that you mark.";
    public override string MoreOverleaf => "More of them: overleaf.";
    public override string DefectsOverleaf => "Tests and their results. Defects that are or could become a danger: overleaf";
    public override IReadOnlyList<string> YesAndNo { get; } = ["yes", "no"];
    public override IReadOnlyList<string> Cautions { get; } =
    [
        "What is written here counts once it is entered into the record of the visit and checked.",
        "Every answer is the examiner’s own and starts from the item. Nothing is ticked beforehand.",
    ];

    public override string Label(FormLine line) =>
        OfVisit(line) ?? OfItem(line) ?? throw new ArgumentOutOfRangeException(nameof(line), line, null);

    private static string? OfVisit(FormLine line) =>
        line switch
        {
            FormLine.Reference => "Your reference of the visit",
            FormLine.Regime => "Regime: the law that applies, such as gb-loler",
            FormLine.EmployerName => "Employer: name",
            FormLine.EmployerAddress => "Employer: postal address",
            FormLine.PremisesName => "Premises: name",
            FormLine.PremisesAddress => "Premises: postal address",
            FormLine.HiredFromName => "Hired from: name, where it is hired",
            FormLine.HiredFromAddress => "Hired from: postal address",
            FormLine.AuthorityName => "Enforcing authority: name, where known",
            FormLine.AuthorityAddress => "Enforcing authority: postal address",
            FormLine.ExaminedOn => "Examined on",
            FormLine.ReportedOn => "Date of the report",
            FormLine.Basis => "Basis: why it was examined. Write another beside the item",
            FormLine.PersonId => "Short name, such as ex1",
            FormLine.PersonName => "Name in full",
            FormLine.PersonAddress => "Postal address",
            FormLine.Qualifications => "Qualifications: what makes the person competent",
            FormLine.SelfEmployed => "Self-employed",
            FormLine.ItsEmployerName => "Where not self-employed: employer's name",
            FormLine.ItsEmployerAddress => "Employer's postal address",
            _ => null,
        };

    private static string? OfItem(FormLine line) =>
        line switch
        {
            FormLine.ItemId => "Id of the item, its own name",
            FormLine.Serial => "Serial or batch number, as marked",
            FormLine.OwnersMark => "Owner's mark",
            FormLine.Maker => "Maker",
            FormLine.Model => "Model",
            FormLine.PartNumber => "Part number",
            FormLine.Manufactured => "Date of manufacture",
            FormLine.FirstUsed => "First used",
            FormLine.NeverUsed => "Never used",
            FormLine.LastExamined => "Last thorough examination",
            FormLine.FittedTo => "Fitted to (id)",
            FormLine.Purpose => "Purpose",
            FormLine.Description => "Description: what it is",
            FormLine.SafeWorkingLoad => "Safe working load, with its unit",
            FormLine.MarkedStrength => "Marked strength",
            FormLine.NotMarked => "No load marked",
            FormLine.SourceTitle => "Maker's instructions: title of the document",
            FormLine.SourceRevision => "Revision or date",
            FormLine.SourcePage => "Page",
            FormLine.MaxUseYears => "Max. years of use",
            FormLine.MaxStorageYears => "Max. years stored",
            FormLine.MaxAgeYears => "Max. age, years",
            FormLine.MaxCleanings => "Max. cleanings",
            FormLine.IntervalMonths => "Interval, months",
            FormLine.NoLimit => "No time limit, says the maker",
            FormLine.EventEndsService => "Maker retires it after any exceptional event",
            FormLine.InstructionsSought => "No instructions to be had: how they were sought",
            FormLine.UseUntil => "Then: use until",
            FormLine.NominalDiameter => "Diameter, mm",
            FormLine.DiameterTolerance => "Tolerance, ± %",
            FormLine.PermittedParts => "Parts that may be fitted",
            FormLine.MinimumTail => "Least tail, mm",
            FormLine.Retying => "Who may re-tie it",
            FormLine.Standards => "Standards marked",
            _ => null,
        };
}
