using ExamDocs.Core.Records;
using NodaTime;

namespace ExamDocs.UseCases.Tests.SeededYears;

/// <summary>One item of the invented firm, with what nobody sees: how fast it wears.</summary>
internal sealed class SeededItem
{
    public required string Id { get; init; }

    public required string Serial { get; init; }

    public required SeededModel Model { get; init; }

    public required LocalDate FirstUsed { get; init; }

    /// <summary>The site where it is kept, from 0.</summary>
    public required int Site { get; init; }

    /// <summary>The item that it is fitted to.</summary>
    public string? FittedTo { get; set; }

    public LocalDate? LastExamined { get; set; }

    /// <summary>Of a bridge: what it runs through, and the ground it is used on.</summary>
    public Exposure? Exposure { get; init; }

    /// <summary>Of a bridge: millimetres of diameter that it loses each month at its middle.</summary>
    public double WearPerMonth { get; init; }

    public bool IsNoticed { get; init; }

    public double MonthsOn(LocalDate day) => Period.Between(FirstUsed, day, PeriodUnits.Days).Days / 30.4375;

    /// <summary>True after the last day that its maker lets it serve.</summary>
    public bool IsExpiredOn(LocalDate day) => day > FirstUsed.PlusYears(Model.UseYears);

    public Item Row(ItemStatus status = ItemStatus.InUse) =>
        new()
        {
            Id = Id,
            Category = Model.Category,
            Description = Model.Description,
            Maker = Model.Maker,
            Model = Model.Model,
            PartNumber = Model.IsBridge ? SeededModel.BridgePart : null,
            Serial = Serial,
            Manufactured = PartialDate.Of(FirstUsed.PlusMonths(-7)),
            Purchased = PartialDate.Of(FirstUsed.PlusMonths(-2)),
            FirstUsed = PartialDate.Of(FirstUsed),
            FittedTo = FittedTo,
            LastExamined = LastExamined is { } day ? PartialDate.Of(day) : null,
            Purpose = Purpose.LiftsPersons,
            Declaration = new Declaration { Reference = $"D-{Serial}", On = FirstUsed.PlusMonths(-6) },
            Status = status,
        };
}
