using ExamDocs.Core.Records;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Common;
using NodaTime;

namespace ExamDocs.Templates.EquipmentRecord.Wording;

/// <inheritdoc />
internal sealed class English : EquipmentRecordPhrases
{
    public override string Title => "Equipment record";

    public override string Lead =>
        "For the keeper of the item: what it is, what its maker allows, and everything on record that was found and "
        + "done. It is no report of an examination.";

    public override string Reasons => "Why";
    public override string Identity => "What it is";
    public override string Purchased => "Purchased";
    public override string ObsoleteOn => "Obsolescence date marked";
    public override string Cleanings => "Cleaned so far";
    public override string Declaration => "Maker's declaration of conformity";
    public override string TransferEvidence => "Evidence of the last examination, on transfer";
    public override string Status => "Where it was at the visit";
    public override string Keeper => "Kept by (employer)";
    public override string Owner => "Owner from whom hired or leased";
    public override string LastExamined => "Examined before that";
    public override string Limits => "What its maker allows";
    public override string LimitsDocument => "Document";
    public override string NoLimits => "No maker's limits are recorded for this item.";
    public override string MaxUse => "In use at most";
    public override string MaxStorage => "In store before first use at most";
    public override string MaxAge => "From manufacture at most";
    public override string MaxCleanings => "Cleaned at most";
    public override string EventEnds => "After an exceptional event";
    public override string EventEndsService => "its service ends";
    public override string Interval => "Examination interval set by the maker";
    public override string NoTimeLimit => "Time limit";
    public override string MakerSaysNone => "the maker states that there is none";
    public override string Unobtainable => "Instructions unobtainable";
    public override string NominalDiameter => "Nominal diameter";
    public override string PermittedParts => "Parts permitted";
    public override string MinTail => "Tail beyond a knot at least";
    public override string Retying => "May be re-tied by";
    public override string Parts => "Parts and assembly";
    public override string NoParts => "No part is recorded as fitted to it, and it is not recorded as fitted to anything.";
    public override string PartNow => "fitted to it now";
    public override string PartBefore => "was fitted to it, and taken off";
    public override string WholeNow => "it is fitted to this now";
    public override string WholeBefore => "it was fitted to this, and taken off";
    public override string ColumnHow => "How";
    public override string ColumnThing => "Item";
    public override string ColumnDescription => "Description";
    public override string ColumnState => "Its own outcome";
    public override string Examinations => "Examinations";
    public override string NoExaminations => "No examination of this item is in the record.";
    public override string ColumnDate => "Date";
    public override string ColumnWhy => "Type, examiner";
    public override string ColumnResult => "Result";
    public override string ColumnFound => "What was found";
    public override string NothingFound => "no defect recorded";
    public override string Renewals => "Parts renewed";
    public override string Remedies => "Repairs and alterations";
    public override string Releases => "Releases from a withdrawal";
    public override string Disposals => "Disposal";
    public override string NotInRecord => "none recorded";

    public override IReadOnlyList<string> Cautions { get; } =
    [
        "This record holds what the record of the visit holds. Examinations and repairs that were never entered are not in it.",
        "The outcome is that of the last examination, by the rules as they stand. Of earlier examinations the conclusion "
            + "is given as it was then recorded.",
        "“Not recorded” means that the record holds no such value; it does not mean that there is none.",
    ];

    public override string RecordHasErrors(IReadOnlyList<string> codes) =>
        $"The record of this item has errors ({string.Join(", ", codes)}). What is printed here is not to be relied on "
        + "until they are put right.";

    public override string Years(int years) => years == 1 ? "1 year" : $"{Printed.Count(years)} years";

    public override string Months(int months) => months == 1 ? "every month" : $"every {Printed.Count(months)} months";

    public override string Times(int times) => times == 1 ? "once" : $"{Printed.Count(times)} times";

    public override string Millimetres(decimal millimetres) => $"{Printed.Number(millimetres)}\u00A0mm";

    public override string Diameter(decimal nominal, decimal? percent) =>
        percent is { } p
            ? $"{Printed.Number(nominal)}\u00A0mm, with {Printed.Number(p)}\u00A0% to either side"
            : $"{Printed.Number(nominal)}\u00A0mm; tolerance {CommonPhrases.Languages.English.NotRecorded}";

    public override string Sought(string? sought, LocalDate? until) =>
        $"sought: {Printed.Text(sought)}; by the examiner's own decision not to be used after {Printed.Day(until)}";

    public override string MayRetie(Retying who) =>
        who switch
        {
            Core.Records.Retying.Maker => "the maker only",
            Core.Records.Retying.CompetentPerson => "a competent person",
            _ => "the user",
        };

    public override string DeclarationLine(string? reference, LocalDate? on) => $"{Printed.Text(reference)}, {Printed.Day(on)}";

    public override string Conclusion(Conclusion? conclusion) =>
        conclusion switch
        {
            Core.Records.Conclusion.Fit => "as then concluded: fit",
            Core.Records.Conclusion.Withdraw => "as then concluded: withdraw",
            _ => "conclusion not recorded",
        };

    public override string NextBy(LocalDate day) => $"next due by {Printed.Day(day)}";

    public override string Defect(string part, string description, string danger, string remedy) =>
        $"{part} – {description} ({danger}). Needed: {remedy}.";

    public override string DangerNow => "a danger now";

    public override string DangerLater(LocalDate? on) => $"could become a danger by {Printed.Day(on)}";

    public override string Diameters(int places, string smallest, string largest) =>
        places == 1
            ? $"Diameter at 1 place: mean {smallest}\u00A0mm."
            : $"Diameters at {Printed.Count(places)} places: means from {smallest} to {largest}\u00A0mm.";

    public override string UnreadableDiameters => "Diameters were measured; no reading is legible.";

    public override string Test(string? what, string? result) => $"Test: {Printed.Text(what)}: {Printed.Text(result)}.";

    public override string Event(string? what, LocalDate? on) => $"After an exceptional event: {Printed.Text(what)}, on {Printed.Day(on)}.";

    public override string Remedy(LocalDate? on, string? what, string? by, string? evidence) =>
        $"{Printed.Day(on)}: {Printed.Text(what)}. Done by {Printed.Text(by)}. Evidence: {Printed.Text(evidence)}.";

    public override string Release(LocalDate? on, string by, string? document, LocalDate? withdrawnOn, bool inError, string? grounds)
    {
        var withdrawn =
            document is not null ? $"by {document}"
            : withdrawnOn is { } day ? $"of {Printed.Day(day)}"
            : "by an examination in this record";
        return $"{Printed.Day(on)}: released by {by}{(inError ? ", because it was recorded in error" : "")}. Of the withdrawal "
            + $"{withdrawn}. Grounds: {Printed.Text(grounds)}.";
    }

    public override string Disposal(LocalDate? on, string what, string by) => $"{Printed.Day(on)}: {what}, by {by}.";
}
