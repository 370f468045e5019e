using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Measurement;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Service;

/// <summary>
/// Entries of limits that an item without any may have missed by its spelling: a maker or a model that is nearly its own, or
/// that the item does not state.
/// </summary>
internal static class MissedLimits
{
    /// <summary>Of names this short, one letter makes another model of the same maker.</summary>
    private const int ShortName = 4;

    /// <summary>Empty for an item that has limits.</summary>
    public static IReadOnlyList<RowCase<MakersLimits>> Of(ItemCase item) => item.Limits.All.Count > 0 ? []
        : [.. item.Context.Limits.Where(l => l.Row is { Maker: not null, Model: not null } && Matters(l.Row, item) && MayBeMeant(l, item))];

    /// <summary>Whether the entry could make the outcome of the item worse.</summary>
    private static bool Matters(MakersLimits limits, ItemCase item) =>
        limits is { MaxUseYears: not null } or { MaxAgeYears: not null } or { MaxStorageYears: not null } or { MaxCleanings: not null }
            or { IntervalMonths: not null } or { EventEndsService: true } or { Unobtainable.UseUntil: not null }
        || (limits.PermittedParts is not null && item.Parts.Count > 0)
        || (DiameterBand.Of(limits) is not null && item.Deciding.Any(e => e.Examination.Diameters.Count > 0));

    private static bool MayBeMeant(RowCase<MakersLimits> limits, ItemCase item)
    {
        var users = item.Context.OfModel(limits.Row.Maker!, limits.Row.Model!);
        if (users.Count > 0 && !users.Any(u => string.Equals(u.Item.Category, item.Item.Category, StringComparison.Ordinal)))
            return false;
        return (item.Item.Maker, item.Item.Model) switch
        {
            (null, null) => limits.Row.PermittedParts is not null && item.Parts.Count > 0,
            ({ } maker, null) => IsNear(limits.Row.Maker!, maker, isUsed: false),
            (null, { } model) => IsNear(limits.Row.Model!, model, isUsed: false),
            var (maker, model) => IsNear(limits.Row.Model!, model, users.Count > 0) && IsNear(limits.Row.Maker!, maker, users.Count > 0),
        };
    }

    /// <summary>The name of an entry that other items use is another model's, where it differs in its numbers or is short.</summary>
    private static bool IsNear(string stated, string actual, bool isUsed)
    {
        var (one, other) = (LimitsSpelling.Folded(stated), LimitsSpelling.Folded(actual));
        if (string.Equals(LookingAlike(one), LookingAlike(other), StringComparison.Ordinal))
            return true;
        return NearMiss.Of(other, [one]) is not null && !(isUsed && (one.Length < ShortName || !Digits(one).SequenceEqual(Digits(other))));
    }

    /// <summary>O as 0, I and L as 1: a slip of the eye makes no other model.</summary>
    private static string LookingAlike(string folded) => folded.Replace("-", "", StringComparison.Ordinal).Replace('O', '0').Replace('I', '1').Replace('L', '1');

    private static IEnumerable<char> Digits(string name) => name.Where(char.IsDigit);
}
