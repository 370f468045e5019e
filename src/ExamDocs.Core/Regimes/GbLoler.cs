using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Records;

namespace ExamDocs.Core.Regimes;

/// <summary>Great Britain: lifting equipment, including what lifts persons.</summary>
public sealed class GbLoler : Regime
{
    public const string RegimeId = "gb-loler";

    /// <summary>SI 1998/2307 reg 9(3)(a)(i): equipment for lifting persons, and accessories.</summary>
    public const int PersonsAndAccessoriesMonths = 6;

    /// <summary>SI 1998/2307 reg 9(3)(a)(ii): other lifting equipment.</summary>
    public const int OtherMonths = 12;

    public override string Id => RegimeId;

    public override string Name => "Great Britain: lifting equipment (LOLER)";

    public override string Law => "Lifting Operations and Lifting Equipment Regulations 1998 (SI 1998/2307)";

    /// <summary>By purpose; the basis may shorten it and never lengthens it. A purpose not stated counts as the shorter.</summary>
    public override (int Months, string Why) Interval(ExaminationCase examination)
    {
        var byPurpose = ByPurpose(examination.Item?.Item.Purpose);
        var byBasis = examination.Examination.Basis switch
        {
            Basis.SixMonth => PersonsAndAccessoriesMonths,
            Basis.Scheme => examination.Examination.Scheme?.Months ?? byPurpose,
            _ => byPurpose,
        };
        var months = Math.Min(byPurpose, byBasis);
        var why = byBasis < byPurpose ? "the basis of the examination" : "the purpose of the item";
        return (months, string.Create(CultureInfo.InvariantCulture, $"{months} months by {why} (SI 1998/2307 reg 9(3)(a))"));
    }

    public static int ByPurpose(Purpose? purpose) => purpose is Purpose.Other ? OtherMonths : PersonsAndAccessoriesMonths;
}
