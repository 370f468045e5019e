using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds an item with what is marked on it.</summary>
internal static class ItemBinder
{
    /// <summary>Largest load that is not a slip of the finger, whatever its unit.</summary>
    private const decimal Plausible = 1_000_000;

    /// <summary>More cleanings than anything lives through: a slip of the finger.</summary>
    public const int MostCleanings = 10_000;

    public static Item Item(Members m) =>
        new()
        {
            Id = m.OwnId("id"),
            Category = m.Identity("category"),
            Description = m.FilledText("description"),
            Maker = m.MarkText("maker"),
            Model = m.MarkText("model"),
            PartNumber = m.Marking("partNumber"),
            Serial = m.Marking("serial"),
            OwnersMark = m.Marking("ownersMark"),
            Manufactured = m.Partial("manufactured"),
            Purchased = m.Partial("purchased"),
            FirstUsed = m.Partial("firstUsed"),
            NeverUsed = m.Flag("neverUsed"),
            Cleanings = m.Whole("cleanings", 0, MostCleanings, limits: true),
            ObsoleteOn = m.Partial("obsoleteOn", limits: true),
            SafeWorkingLoad = m.Part("safeWorkingLoad", Load),
            MarkedStrength = m.Part("markedStrength", Load),
            Standards = m.Texts("standards") ?? [],
            FittedTo = m.Identity("fittedTo"),
            LastExamined = m.Partial("lastExamined"),
            Purpose = m.Word("purpose", Words.Purposes),
            Declaration = m.Part("declaration", d => new Declaration { Reference = d.FilledText("reference"), On = d.Date("on") }),
            TransferEvidence = m.FilledText("transferEvidence"),
            Status = m.Word("status", Words.Statuses),
            Formerly = m.Identity("formerly"),
            NotTheSameAs = m.List("notTheSameAs", d => new DifferentItem
            {
                Id = d.Identity("id"),
                Document = d.Marking("document"),
                Because = d.FilledText("because"),
            }),
        };

    public static Load Load(Members m) =>
        new()
        {
            Value = m.Number("value", 0, Plausible),
            Unit = m.OneOf("unit", Words.LoadUnits),
            NotMarked = m.Flag("notMarked") ?? false,
            Basis = m.FilledText("basis"),
        };
}
