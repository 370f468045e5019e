using ExamDocs.Core.Regimes;

namespace ExamDocs.Templates.Wording;

public static partial class English
{
    private static RegimeWording Unnamed => WorkAtHeight with
    {
        Title = "Report of examination",
        Law = "The law this examination was made under is not recorded",
        ShortLaw = NotRecorded,
        Examination = "examination",
        DutyNow = "The item must not be used before the defect is put right.",
        NoticeLead = "The examination found a defect that is, or could become, a danger to persons. The employer is told of it by this notice.",
    };

    /// <summary>The wording of this regime; one that claims no law where the regime is unknown.</summary>
    public static RegimeWording Regime(Regime? regime) => regime switch
    {
        { AddedFrom: { } file } => Added(regime, file),
        { Id: "gb-loler" } => Loler,
        { Id: "ni-loler" } => LolerNorthernIreland,
        { Id: "gb-wah" } => WorkAtHeight,
        { Id: "eu-en365" } => Europe,
        { Id: "de" } => Germany,
        { Id: "fr" } => France,
        { Id: "au-nz" } => AustraliaNewZealand,
        { Id: "us" } => UnitedStates,
        _ => Unnamed,
    };

    /// <summary>A regime that the user added says so wherever its law is named.</summary>
    private static RegimeWording Added(Regime regime, string file) => Periodic with
    {
        Law = $"{string.Join("; ", regime.Laws.InForce(null).Select(l => l.Cited))}. {LawAndSources.Added(file)}",
        ShortLaw = $"{regime.Name} ({LawAndSources.AddedShort(file)})",
    };
}
