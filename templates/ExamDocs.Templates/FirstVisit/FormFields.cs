using ExamDocs.Core.Records;
using ExamDocs.Templates.CheckSheet.Wording;
using ExamDocs.Templates.FirstVisit.Wording;
using ExamDocs.Templates.Shared.Wording;

namespace ExamDocs.Templates.FirstVisit;

/// <summary>What the sheets for a first visit ask: the same as the workbook, in its order.</summary>
public static class FormFields
{
    public static IReadOnlyList<FormField> Visit =>
        [
            Needed("Visit/reference", FormLine.Reference, 4),
            Needed("Visit/regime", FormLine.Regime, 4),
            Needed("Visit/examined on", FormLine.ExaminedOn, 2),
            Needed("Visit/reported on", FormLine.ReportedOn, 2),
            Needed("Visit/employer name", FormLine.EmployerName, 4),
            Needed("Visit/employer address", FormLine.EmployerAddress, 8),
            Needed("Visit/premises name", FormLine.PremisesName, 4),
            Needed("Visit/premises address", FormLine.PremisesAddress, 8),
            Field("Visit/hired from name", FormLine.HiredFromName, 4),
            Field("Visit/hired from address", FormLine.HiredFromAddress, 8),
            Field("Visit/enforcing authority name", FormLine.AuthorityName, 4),
            Field("Visit/enforcing authority address", FormLine.AuthorityAddress, 8),
            Needed("Visit/basis", FormLine.Basis, 12) with
            {
                Choices = [.. Enum.GetValues<Basis>().Select(CheckSheetPhrases.Current.BasisBox)],
            },
        ];

    public static IReadOnlyList<FormField> Person =>
        [
            Needed("Visit/person id", FormLine.PersonId, 3),
            Needed("Visit/person name", FormLine.PersonName, 9),
            Needed("Visit/person address", FormLine.PersonAddress, 12),
            Needed("Visit/person qualifications", FormLine.Qualifications, 9),
            Needed("Visit/person self-employed", FormLine.SelfEmployed, 3) with
            {
                Choices = FirstVisitPhrases.Current.YesAndNo,
            },
            Field("Visit/person employer name", FormLine.ItsEmployerName, 4),
            Field("Visit/person employer address", FormLine.ItsEmployerAddress, 8),
        ];

    public static IReadOnlyList<FormField> Model =>
        [
            Needed("Models/maker", FormLine.Maker, 3),
            Needed("Models/model", FormLine.Model, 3),
            Field("Models/part number", FormLine.PartNumber, 2),
            Needed("Models/description", FormLine.Description, 4),
            Field("Models/safe working load", FormLine.SafeWorkingLoad, 3),
            Ticked("Models/safe working load not marked", FormLine.NotMarked, 2),
            Field("Models/marked strength", FormLine.MarkedStrength, 2),
            Field("Models/standards", FormLine.Standards, 5),
            Needed("Models/source title", FormLine.SourceTitle, 7),
            Field("Models/source revision", FormLine.SourceRevision, 3),
            Field("Models/source page", FormLine.SourcePage, 2),
            Field("Models/max use years", FormLine.MaxUseYears, 2),
            Field("Models/max storage years", FormLine.MaxStorageYears, 2),
            Field("Models/max age years", FormLine.MaxAgeYears, 2),
            Ticked("Models/no limit", FormLine.NoLimit, 2),
            Field("Models/interval months", FormLine.IntervalMonths, 2),
            Field("Models/max cleanings", FormLine.MaxCleanings, 2),
            Field("Models/instructions sought", FormLine.InstructionsSought, 5),
            Field("Models/use until", FormLine.UseUntil, 2),
            Ticked("Models/event ends service", FormLine.EventEndsService, 5),
            Field("Models/nominal diameter mm", FormLine.NominalDiameter, 2),
            Field("Models/diameter tolerance percent", FormLine.DiameterTolerance, 2),
            Field("Models/permitted parts", FormLine.PermittedParts, 4),
            Field("Models/minimum tail mm", FormLine.MinimumTail, 2),
            Field("Models/re-tying", FormLine.Retying, 2),
        ];

    public static IReadOnlyList<FormField> Item =>
        [
            Needed("item/id", FormLine.ItemId, 3),
            Needed("item/serial", FormLine.Serial, 3),
            Field("item/owner's mark", FormLine.OwnersMark, 3),
            Field("item/fitted to", FormLine.FittedTo, 3),
            Needed("item/maker", FormLine.Maker, 4),
            Needed("item/model", FormLine.Model, 5),
            Field("item/part number", FormLine.PartNumber, 3),
            Field("item/manufactured", FormLine.Manufactured, 3),
            Field("item/first used", FormLine.FirstUsed, 3),
            Ticked("item/never used", FormLine.NeverUsed, 2),
            Field("item/last examined", FormLine.LastExamined, 4),
            Field("item/purpose", FormLine.Purpose, 12) with
            {
                Choices = [.. Enum.GetValues<Purpose>().Select(p => Phrases.Common.Purpose(p))],
            },
        ];

    private static FormField Field(string asks, FormLine line, int width) => new(asks, line, width);

    private static FormField Needed(string asks, FormLine line, int width) => Field(asks, line, width) with { IsNeeded = true };

    /// <summary>One box, whose label says what a tick in it means.</summary>
    private static FormField Ticked(string asks, FormLine line, int width) => Field(asks, line, width) with { Choices = [""] };
}
