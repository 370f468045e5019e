using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds what a maker's instructions allow. The bounds only catch slips of the finger; none of them is a limit.</summary>
internal static class LimitsBinder
{
    public static MakersLimits Limits(Members m) =>
        new()
        {
            Maker = m.Text("maker"),
            Model = m.Text("model"),
            PartNumber = m.Identity("partNumber"),
            Source = m.Part("source", s => new LimitsSource
            {
                Title = s.Text("title"),
                Revision = s.Text("revision"),
                Page = s.Text("page"),
            }),
            MaxUseYears = m.Whole("maxUseYears", 1, 100),
            MaxStorageYears = m.Whole("maxStorageYears", 1, 100),
            MaxAgeYears = m.Whole("maxAgeYears", 1, 100),
            MaxCleanings = m.Whole("maxCleanings", 0, ItemBinder.MostCleanings),
            EventEndsService = m.Flag("eventEndsService") ?? false,
            IntervalMonths = m.Whole("intervalMonths", 1, 120),
            NoLimit = m.Flag("noLimit") ?? false,
            Unobtainable = m.Part("unobtainable", u => new Unobtainable { Sought = u.Text("sought"), UseUntil = u.Date("useUntil") }),
            NominalDiameterMm = m.Number("nominalDiameterMm", 0.1m, 1_000),
            DiameterTolerancePercent = m.Number("diameterTolerancePercent", 0, 100),
            PermittedParts = m.Texts("permittedParts"),
            MinTailMm = m.Number("minTailMm", 0, 10_000),
            Retying = m.Word("retying", Words.Retyings),
            Description = m.Text("description"),
            SafeWorkingLoad = m.Part("safeWorkingLoad", ItemBinder.Load),
            MarkedStrength = m.Part("markedStrength", ItemBinder.Load),
            Standards = m.Texts("standards") ?? [],
        };
}
