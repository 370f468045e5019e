namespace ExamDocs.Intake.Vocabulary;

/// <summary>A unit as it may be written behind a number, and what it is exactly of the unit that its column is in.</summary>
/// <param name="Column">The unit of the column.</param>
/// <param name="Times">The number is taken so many times,</param>
/// <param name="Per">and divided by this.</param>
/// <param name="Names">How it is written; in lower case.</param>
internal sealed record Unit(string Column, decimal Times, decimal Per, params string[] Names)
{
    public const string Millimetres = "mm";
    public const string Percent = "%";
    public const string Years = "years";
    public const string Months = "months";
    public const string Kilograms = "kg";
    public const string Count = "times";

    /// <summary>Loads carry their unit in a member of their own; what is a part of one is converted.</summary>
    public const string Load = "kg, t, kN or persons";

    private static readonly string[] Mm = ["mm", "millimetre", "millimetres", "millimeter", "millimeters", "millimètre", "millimètres"];

    private static readonly string[] Cm = ["cm", "centimetre", "centimetres", "centimeter", "zentimeter", "centimètre", "centimètres"];

    private static readonly string[] Metre = ["m", "metre", "metres", "meter", "mètre", "mètres"];

    private static readonly string[] Year = ["year", "years", "yr", "yrs", "y", "jahr", "jahre", "jahren", "an", "ans", "année", "années"];

    private static readonly string[] Month = ["month", "months", "mth", "mths", "monat", "monate", "monaten", "mois"];

    private static readonly string[] Kilogram =
    [
        "kg",
        "kgs",
        "kilo",
        "kilos",
        "kilogram",
        "kilograms",
        "kilogramm",
        "kilogramme",
        "kilogrammes",
    ];

    private static readonly string[] Tonne = ["t", "tonne", "tonnes", "tonnen"];

    public static IReadOnlyList<Unit> All { get; } =
    [
        new(Millimetres, 1, 1, Mm),
        new(Millimetres, 10, 1, Cm),
        new(Millimetres, 1000, 1, Metre),
        new(Percent, 1, 1, "%", "per cent", "percent", "prozent", "pour cent", "pourcent"),
        new(Years, 1, 1, Year),
        new(Years, 1, 12, Month),
        new(Months, 1, 1, Month),
        new(Months, 12, 1, Year),
        new(Kilograms, 1, 1, Kilogram),
        new(Kilograms, 1000, 1, Tonne),
        new(Kilograms, 1, 1000, "g", "gram", "grams", "gramm", "gramme", "grammes"),
        new(Count, 1, 1, "times", "x", "mal", "fois", "cleanings", "cleaning", "reinigungen", "nettoyages"),
    ];

    /// <summary>What loads are written in, and what the number becomes in which of the units that a record has.</summary>
    public static IReadOnlyList<(string Recorded, Unit Unit)> Loads { get; } =
    [
        ("kg", new(Load, 1, 1, Kilogram)),
        ("t", new(Load, 1, 1, Tonne)),
        ("kN", new(Load, 1, 1, "kn", "kilonewton", "kilonewtons")),
        ("kN", new(Load, 1, 100, "dan", "dekanewton", "décanewton")),
        ("kN", new(Load, 1, 1000, "n", "newton", "newtons")),
        ("persons", new(Load, 1, 1, "person", "persons", "people", "pers.", "personen", "personne", "personnes")),
    ];

    public bool IsNamed(string typed) => Names.Contains(typed.ToLowerInvariant(), StringComparer.Ordinal);

    /// <summary>The unit that a column is in, by the member that its number goes to; null where it has none.</summary>
    public static string? OfMember(string path) =>
        path switch
        {
            "positionMm" or "readingsMm" or "nominalDiameterMm" or "minTailMm" => Millimetres,
            "diameterTolerancePercent" => Percent,
            "maxUseYears" or "maxStorageYears" or "maxAgeYears" => Years,
            "intervalMonths" or "scheme/months" => Months,
            "exposure/userMassKg" => Kilograms,
            "cleanings" or "maxCleanings" => Count,
            "safeWorkingLoad/value" or "markedStrength/value" => Load,
            _ => null,
        };
}
