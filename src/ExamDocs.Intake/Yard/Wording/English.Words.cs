using ExamDocs.Core.Criteria;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Yard.Wording;

/// <content>Words to choose from.</content>
internal sealed partial class English
{
    public override string StateWord(ObservedState state) =>
        state switch
        {
            ObservedState.Clear => "Clear",
            ObservedState.Noted => "Noted",
            ObservedState.Doubt => "Doubt",
            ObservedState.Defect => "Defect",
            ObservedState.NoSign => "Nobody to ask; no sign found",
            ObservedState.NotExamined => "Not examined",
            _ => "Not applicable",
        };

    public override string BasisWord(Basis basis) =>
        basis switch
        {
            Core.Records.Basis.SixMonth => "six-monthly",
            Core.Records.Basis.TwelveMonth => "twelve-monthly",
            Core.Records.Basis.Scheme => "examination scheme",
            Core.Records.Basis.Exceptional => "exceptional event",
            Core.Records.Basis.FirstUse => "before first use",
            _ => "after installation",
        };

    public override string PurposeWord(Purpose purpose) =>
        purpose switch
        {
            Core.Records.Purpose.LiftsPersons => "lifts persons",
            Core.Records.Purpose.Accessory => "lifting accessory",
            Core.Records.Purpose.Other => "other lifting",
            _ => "fall arrest only",
        };

    public override string StatusWord(ItemStatus status) =>
        status switch
        {
            ItemStatus.InUse => "in use",
            ItemStatus.Stored => "stored",
            ItemStatus.NotPresented => "not presented",
            ItemStatus.Lost => "lost",
            _ => "destroyed",
        };

    public override string MeansWord(Means means) =>
        means switch
        {
            Means.Look => "look",
            Means.Feel => "feel",
            Means.Measure => "measure",
            Means.Operate => "operate",
            Means.Ask => "ask",
            _ => "read",
        };
}
