using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Binding;

/// <summary>Binds what a maker's instructions allow. The bounds only catch slips of the finger; none of them is a limit.</summary>
internal static class LimitsBinder
{
    public static MakersLimits Limits(Members m) =>
        new()
        {
            Maker = m.MarkText("maker"),
            Model = m.MarkText("model"),
            PartNumber = m.Marking("partNumber"),
            // That a revision or a page is not known is said in so many words where the instructions cannot be had.
            Source = m.Part("source", s => new LimitsSource
            {
                Title = s.FilledText("title"),
                Revision = s.Text("revision"),
                Page = s.Text("page"),
            }),
            MaxUseYears = m.Whole("maxUseYears", 1, 100, limits: true),
            MaxStorageYears = m.Whole("maxStorageYears", 1, 100, limits: true),
            MaxAgeYears = m.Whole("maxAgeYears", 1, 100, limits: true),
            MaxCleanings = m.Whole("maxCleanings", 0, ItemBinder.MostCleanings, limits: true),
            EventEndsService = m.Flag("eventEndsService") ?? false,
            IntervalMonths = m.Whole("intervalMonths", 1, 120, limits: true),
            NoLimit = m.Flag("noLimit") ?? false,
            Unobtainable = m.Part("unobtainable", u => new Unobtainable
            {
                Sought = u.FilledText("sought"),
                UseUntil = u.Date("useUntil", limits: true),
            }),
            NominalDiameterMm = m.Number("nominalDiameterMm", 0.1m, 1_000, limits: true),
            DiameterTolerancePercent = m.Number("diameterTolerancePercent", 0, 100, limits: true),
            PermittedParts = m.Texts("permittedParts"),
            MinTailMm = m.Number("minTailMm", 0, 10_000, limits: true),
            Retying = m.Word("retying", Words.Retyings),
            Description = m.FilledText("description"),
            SafeWorkingLoad = m.Part("safeWorkingLoad", ItemBinder.Load),
            MarkedStrength = m.Part("markedStrength", ItemBinder.Load),
            Standards = m.Texts("standards") ?? [],
        };
}
