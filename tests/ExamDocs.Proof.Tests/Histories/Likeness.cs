namespace ExamDocs.Proof.Tests.Histories;

/// <summary>Two rows of different records held beside each other.</summary>
internal static class Likeness
{
    public static bool IsSame(Row a, Row b) =>
        Like(a.Id, b.Id) && ((OwnerAgrees(a, b) && !Contradicts(a, b)) || (MakerIsSame(a, b) && Like(a.Serial, b.Serial)));

    public static bool OwnerAgrees(Row a, Row b) => a.Owner is null || b.Owner is null || a.Owner == b.Owner;

    public static bool Contradicts(Row a, Row b) =>
        Unlike(a.Category, b.Category)
        || MakerDiffers(a, b)
        || Unlike(a.Model, b.Model)
        || Unlike(a.PartNumber, b.PartNumber)
        || Unlike(a.Serial, b.Serial)
        || Unlike(a.Mark, b.Mark)
        || MadeDiffers(a, b);

    /// <summary>It may be the same thing, and what is written does not settle it.</summary>
    /// <param name="now">The row that is looked at.</param>
    /// <param name="then">One of the other thing.</param>
    /// <param name="isBatch">Things of other ids bear this serial as well.</param>
    public static bool IsConfusable(Row now, Row then, bool isBatch)
    {
        var ids = Like(now.Id, then.Id);
        var owners = OwnerAgrees(now, then);
        return (ids && owners && Contradicts(now, then))
            || (!ids && !isBatch && Like(now.Serial, then.Serial) && BearsOneName(now, then))
            || (
                ids
                && !owners
                && !Contradicts(now, then)
                && (now.Serial is null || then.Serial is null || now.Maker is null || then.Maker is null)
            )
            || (ids && !owners && Like(now.Serial, then.Serial) && MakerMayBeSame(now, then));
    }

    /// <summary>Something on the two tells them apart.</summary>
    public static bool MarkingDiffers(Row a, Row b) =>
        Unlike(a.Serial, b.Serial)
        || Unlike(a.Mark, b.Mark)
        || MadeDiffers(a, b)
        || ((MakerDiffers(a, b) || Unlike(a.Model, b.Model) || Unlike(a.PartNumber, b.PartNumber)) && !Like(a.Serial, b.Serial));

    public static bool SharesMarking(Row a, Row b) => Like(a.Serial, b.Serial) || Like(a.Mark, b.Mark);

    public static bool Like(Spelling? a, Spelling? b) => a is not null && b is not null && a.IsLike(b);

    public static bool MakerIsSame(Row a, Row b) => Like(a.Maker, b.Maker) || (a.MakerFirm is not null && a.MakerFirm == b.MakerFirm);

    /// <summary>One of the two may be the other cut short.</summary>
    private static bool MakerMayBeSame(Row a, Row b) =>
        MakerIsSame(a, b)
        || (
            a.MakerFirm is { } one
            && b.MakerFirm is { } other
            && (one.StartsWith(other, StringComparison.Ordinal) || other.StartsWith(one, StringComparison.Ordinal))
        );

    private static bool BearsOneName(Row a, Row b)
    {
        var one = a.Owner is not null && a.Owner == b.Owner;
        return (MakerMayBeSame(a, b) || (one && (a.Maker is null || b.Maker is null)))
            && (Like(a.Category, b.Category) || (one && (a.Category is null || b.Category is null)));
    }

    private static bool Unlike(Spelling? a, Spelling? b) => a is not null && b is not null && !a.IsLike(b);

    private static bool MakerDiffers(Row a, Row b) => Unlike(a.Maker, b.Maker) && a.MakerFirm != b.MakerFirm;

    private static bool MadeDiffers(Row a, Row b) =>
        a.Made is { } one && b.Made is { } other && (one.Last < other.First || other.Last < one.First);
}
