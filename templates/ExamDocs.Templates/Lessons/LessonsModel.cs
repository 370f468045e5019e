using ExamDocs.Core.Statistics;
using MathNet.Numerics.Statistics;
using NodaTime;

namespace ExamDocs.Templates.Lessons;

/// <summary>What the groups of a table have in common.</summary>
public enum GroupedBy
{
    /// <summary>One group of all.</summary>
    Everything,
    Category,
    Model,
    Hardware,
    Ground,

    /// <summary>Years since first use.</summary>
    Age,
}

/// <summary>What the records of a register teach. A page beside documents: it has no number, and no register knows it.</summary>
public sealed class LessonsModel
{
    /// <summary>
    /// Our own choice, no law: with fewer things a group's numbers are shown, and nothing is concluded from a difference to another.
    /// </summary>
    public const int LeastToCompare = 20;

    /// <param name="lessons">What was counted.</param>
    /// <param name="on">The day of the page.</param>
    /// <param name="letterhead">The issuer's; null for none.</param>
    /// <param name="softwareVersion">Version of the software that made it.</param>
    public LessonsModel(RecordLessons lessons, LocalDate on, Letterhead? letterhead, string softwareVersion) =>
        (Lessons, On, Letterhead, SoftwareVersion) = (lessons, on, letterhead, softwareVersion);

    public RecordLessons Lessons { get; }

    public LocalDate On { get; }

    public Letterhead? Letterhead { get; }

    public string SoftwareVersion { get; }
}

/// <summary>What was counted in a register.</summary>
public sealed record RecordLessons
{
    /// <summary>Whose kit; null for everybody's in the register.</summary>
    public string? Employer { get; init; }

    public required int Visits { get; init; }

    /// <summary>Items that were examined at least once.</summary>
    public required int Items { get; init; }

    /// <summary>The first and the last day of examination.</summary>
    public required LocalDate First { get; init; }

    public required LocalDate Last { get; init; }

    public required IReadOnlyList<RateTable> Rates { get; init; }

    public required IReadOnlyList<SurvivalTable> Survival { get; init; }

    /// <summary>Rope bridges of which survival says nothing: the day of first use is not known, or only one examination is.</summary>
    public required int LeftOut { get; init; }

    public required IReadOnlyList<WearGroup> Wear { get; init; }

    /// <summary>The most frequent first.</summary>
    public required IReadOnlyList<ReasonCount> Reasons { get; init; }

    /// <summary>By criterion, in the order of their names; the first, without a name, is of all together.</summary>
    public required IReadOnlyList<AgreementRow> Agreement { get; init; }
}

/// <summary>How many were withdrawn for wear or a defect, group by group.</summary>
public sealed record RateTable(GroupedBy By, IReadOnlyList<RateGroup> Groups)
{
    /// <summary>True where no two groups have enough items to be compared.</summary>
    public bool IsTooFew => Groups.Count(g => !g.IsTooFew && g.Name is not null) < 2;
}

/// <param name="Name">As recorded; null where it is not.</param>
/// <param name="Withdrawn">Of the items of the group.</param>
public sealed record RateGroup(string? Name, Proportion Withdrawn)
{
    public bool IsTooFew => Withdrawn.Total < LessonsModel.LeastToCompare;
}

/// <summary>How long rope bridges last, group by group.</summary>
public sealed record SurvivalTable(GroupedBy By, IReadOnlyList<SurvivalGroup> Groups);

/// <param name="Name">As recorded; null where it is not.</param>
/// <param name="Curve">Ages in months.</param>
/// <param name="Months">For which they were watched, all together.</param>
/// <param name="AgainstOthers">Against all other groups together; null where there are none, or too few of either.</param>
public sealed record SurvivalGroup(string? Name, KaplanMeier Curve, double Months, LogRank? AgainstOthers)
{
    public bool IsTooFew => Curve.Things < LessonsModel.LeastToCompare;

    /// <summary>Withdrawals in a year of a hundred bridges, with the exact interval of the count; null where none was watched.</summary>
    public (double Rate, ConfidenceInterval Interval)? PerHundredYears
    {
        get
        {
            if (Months <= 0)
                return null;
            var (factor, counted) = (1200 / Months, PoissonCount.Garwood(Curve.Events));
            return (Curve.Events * factor, new ConfidenceInterval(counted.Low * factor, counted.High * factor));
        }
    }
}

/// <param name="Name">Hardware on the bridge, as recorded; null where it is not.</param>
/// <param name="MmPerMonth">Of each bridge, the least first: by how much its thinnest place gets thinner.</param>
public sealed record WearGroup(string? Name, IReadOnlyList<double> MmPerMonth)
{
    public bool IsTooFew => MmPerMonth.Count < LessonsModel.LeastToCompare;

    public double Median => MmPerMonth.Median();

    public double LowerQuartile => MmPerMonth.LowerQuartile();

    public double UpperQuartile => MmPerMonth.UpperQuartile();
}

/// <param name="Category">Id of the category.</param>
/// <param name="Criterion">Id of the criterion.</param>
/// <param name="Items">So many were withdrawn with a defect or a doubt against it.</param>
public sealed record ReasonCount(string? Category, string Criterion, int Items);

/// <param name="Criterion">Id; null for all together.</param>
/// <param name="Kappa">Whether both saw something, or only one.</param>
public sealed record AgreementRow(string? Criterion, CohenKappa Kappa)
{
    public bool IsTooFew => Kappa.Pairs < LessonsModel.LeastToCompare;
}
