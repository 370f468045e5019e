using ExamDocs.Intake.OwnList.Words;

namespace ExamDocs.Intake.OwnList.Mapping;

/// <summary>What a field is, for whoever is asked.</summary>
public static class FieldWords
{
    /// <summary>As the end of "it seems to be ...".</summary>
    public static string Of(ListField field) =>
        field switch
        {
            ListField.Id => "the item's own id",
            ListField.Category => "the kind of kit",
            ListField.Description => "a description",
            ListField.Maker => "the maker",
            ListField.Model => "the model",
            ListField.MakerAndModel => "maker and model in one",
            ListField.PartNumber => "the maker's part number",
            ListField.Serial => "the serial number",
            ListField.OwnersMark => "the owner's mark",
            ListField.Manufactured => "the date of manufacture",
            ListField.Purchased => "the date of purchase",
            ListField.FirstUsed => "the date of first use",
            ListField.SafeWorkingLoad => "the safe working load",
            ListField.MarkedStrength => "the strength marked on it",
            ListField.Standards => "standards",
            ListField.LastExamined => "the date of the last examination",
            ListField.ObsoleteOn => "the last day of service",
            ListField.FittedTo => "the id of the item that it is fitted to",
            ListField.State => "a status, or the result of an earlier examination",
            ListField.OutOfUse => "filled in where the item is out of use",
            ListField.InUse => "yes or no: whether the item is in use",
            ListField.Remark => "something else: kept in the description",
            _ => "something else: left out",
        };
}
