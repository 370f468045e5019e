using static ExamDocs.Intake.Vocabulary.Language;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>What people write for units, for the order of dates and for how kit is used.</summary>
internal static class MeasureSynonyms
{
    public static IReadOnlyList<Synonym> All { get; } =
    [
        new("kg", English, "kgs", "kg.", "kilo", "kilos", "kilogram", "kilograms"),
        new("kg", German, "Kilogramm"),
        new("kg", French, "kilogramme", "kilogrammes"),
        new("t", English, "tonne", "tonnes"),
        new("t", German, "Tonnen"),
        new("kN", English, "kilonewton", "kilonewtons"),
        new("persons", English, "person", "people", "pers", "pers."),
        new("persons", German, "Personen"),
        new("persons", French, "personne", "personnes"),
        new("day-month-year", English, "dd/mm/yyyy", "d/m/y", "dmy", "dd.mm.yyyy", "day first"),
        new("day-month-year", German, "Tag-Monat-Jahr", "TT.MM.JJJJ", "TMJ"),
        new("day-month-year", French, "jour-mois-année", "jj/mm/aaaa", "JMA"),
        new("month-day-year", English, "mm/dd/yyyy", "m/d/y", "mdy", "month first"),
        new("month-day-year", German, "Monat-Tag-Jahr"),
        new("month-day-year", French, "mois-jour-année"),
        new("year-month-day", English, "yyyy-mm-dd", "yyyy/mm/dd", "ymd", "year first", "iso"),
        new("year-month-day", German, "Jahr-Monat-Tag", "JJJJ-MM-TT"),
        new("year-month-day", French, "année-mois-jour", "aaaa-mm-jj"),
        new("arduous", English, "arduous use", "heavy use", "harsh use"),
        new("arduous", German, "starke Beanspruchung", "harter Einsatz", "schwerer Einsatz", "stark beansprucht"),
        new("arduous", French, "intensif", "intensive", "usage intensif", "sollicitation intensive"),
        new("hand-powered", English, "by hand", "hand operated"),
        new("hand-powered", German, "handbetrieben", "von Hand betrieben"),
        new("hand-powered", French, "manuel", "manuelle", "à la main", "mû à la main"),
    ];
}
