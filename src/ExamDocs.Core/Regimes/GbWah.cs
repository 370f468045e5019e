using System.Globalization;
using ExamDocs.Core.Cases;

namespace ExamDocs.Core.Regimes;

/// <summary>Great Britain: personal kit outside lifting, such as helmets and kit that only arrests falls.</summary>
public sealed class GbWah : Regime
{
    public const string RegimeId = "gb-wah";

    /// <summary>HSE press release E186:02: detailed inspection at least every 6 months.</summary>
    public const int UsualMonths = 6;

    /// <summary>HSE press release E186:02: every 3 months in arduous use.</summary>
    public const int ArduousMonths = 3;

    /// <summary>The word in the exposure's use that tells arduous use.</summary>
    public const string Arduous = "arduous";

    public override string Id => RegimeId;

    public override string Name => "Great Britain: personal kit for work at height (WAHR)";

    public override string Law => "Work at Height Regulations 2005 (SI 2005/735)";

    public override (int Months, string Why) Interval(ExaminationCase examination)
    {
        var arduous = examination.Examination.Exposure?.Use?.Contains(Arduous, StringComparison.OrdinalIgnoreCase) is true;
        var byUse = arduous ? ArduousMonths : UsualMonths;
        var months = Math.Min(byUse, examination.Examination.Scheme?.Months ?? byUse);
        return (months, string.Create(CultureInfo.InvariantCulture,
            $"{months} months{(arduous ? " in arduous use" : "")} (HSE press release E186:02)"));
    }
}
