using ExamDocs.Core.Determination;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Cases;

/// <summary>
/// Maker, model and serial number of an item, to be held against others. Capitals make no difference: one item written down
/// twice is seldom written alike.
/// </summary>
public readonly record struct ItemMarking
{
    private ItemMarking(string? maker, string? model, string? serial) => (Maker, Model, Serial) = (Fold(maker), Fold(model), Fold(serial));

    public string? Maker { get; }

    public string? Model { get; }

    public string? Serial { get; }

    public static ItemMarking Of(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return new(item.Maker, item.Model, item.Serial);
    }

    public static ItemMarking Of(PastWithdrawal withdrawal)
    {
        ArgumentNullException.ThrowIfNull(withdrawal);
        return new(withdrawal.Maker, withdrawal.Model, withdrawal.Serial);
    }

    private static string? Fold(string? text) => text?.ToUpperInvariant();
}
