using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.Regimes;

/// <summary>How the laws word the documents. The names of laws stay in the language of the law.</summary>
public abstract class RegimePhrases
{
    public static InEachLanguage<RegimePhrases> Languages { get; } = new(new English(), new German(), new French());

    /// <summary>In the language of the document that is being made.</summary>
    public static RegimePhrases Current => Languages.Current;

    /// <summary>The wording of this regime; one that claims no law where the regime is unknown.</summary>
    public RegimeWording Of(Regime? regime) =>
        regime switch
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

    protected abstract RegimeWording Loler { get; }

    protected abstract RegimeWording LolerNorthernIreland { get; }

    protected abstract RegimeWording WorkAtHeight { get; }

    /// <summary>For every law of which the program has no wording of its own.</summary>
    protected abstract RegimeWording Periodic { get; }

    protected abstract RegimeWording Europe { get; }

    protected abstract RegimeWording Germany { get; }

    protected abstract RegimeWording France { get; }

    protected abstract RegimeWording AustraliaNewZealand { get; }

    protected abstract RegimeWording UnitedStates { get; }

    protected abstract RegimeWording Unnamed { get; }

    /// <summary>Why it was examined, where it was examined after the day by which it was due.</summary>
    public abstract string Overdue(LocalDate due, string basis);

    /// <summary>Why it was examined, where nobody knows when it was examined before.</summary>
    public abstract string LastNotKnown(string basis);

    /// <summary>A regime that the user added says so wherever its law is named.</summary>
    protected abstract RegimeWording Added(Regime regime, string file);
}
