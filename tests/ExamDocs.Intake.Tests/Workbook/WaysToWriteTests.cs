using System.Globalization;
using ExamDocs.Core.Records;

namespace ExamDocs.Intake.Tests.Workbook;

/// <summary>Ways to write one value: each is read as the one thing that it can mean, or refused. None is read as another.</summary>
public sealed class WaysToWriteTests
{
    /// <summary>How a date is typed, and what it is; nothing where it is refused.</summary>
    public static TheoryData<string, string?> Dates { get; } =
        new()
        {
            { "2026-05-20", "2026-05-20" },
            { "2026-05", "2026-05" },
            { "2026", "2026" },
            { "20/05/2026", "2026-05-20" },
            { "05/20/2026", "2026-05-20" },
            { "20.5.2026", "2026-05-20" },
            { "20.05.2026", "2026-05-20" },
            { "20-05-2026", "2026-05-20" },
            { "20 05 2026", "2026-05-20" },
            { "2026/05/20", "2026-05-20" },
            { "2026.5.20", "2026-05-20" },
            { "20260520", "2026-05-20" },
            { "05/05/2026", "2026-05-05" },
            { "20 May 2026", "2026-05-20" },
            { "20 may 2026", "2026-05-20" },
            { "20th May 2026", "2026-05-20" },
            { "1st May 2026", "2026-05-01" },
            { "20th of May 2026", "2026-05-20" },
            { "May 20, 2026", "2026-05-20" },
            { "May 20th 2026", "2026-05-20" },
            { "20-May-2026", "2026-05-20" },
            { "20.May.2026", "2026-05-20" },
            { "2026-May-20", "2026-05-20" },
            { "2026 May", "2026-05" },
            { "May 2026", "2026-05" },
            { "May-2026", "2026-05" },
            { "Sept. 2024", "2024-09" },
            { "SEP 2024", "2024-09" },
            { "20. Mai 2026", "2026-05-20" },
            { "Mai 2026", "2026-05" },
            { "3. März 2026", "2026-03-03" },
            { "Jänner 2025", "2025-01" },
            { "12. Dez. 2025", "2025-12-12" },
            { "Okt 2024", "2024-10" },
            { "20 mai 2026", "2026-05-20" },
            { "1er mai 2026", "2026-05-01" },
            { "3 févr. 2026", "2026-02-03" },
            { "août 2024", "2024-08" },
            { "15 juil. 2024", "2024-07-15" },
            { "décembre 2025", "2025-12" },
            { "05/2026", "2026-05" },
            { "5.2026", "2026-05" },
            { "2026/05", "2026-05" },
            { "2026-05-20 00:00:00", "2026-05-20" },
            { "2026-05-20T00:00:00Z", "2026-05-20" },
            { "29/02/2024", "2024-02-29" },
            { "03/04/2026", null },
            { "3.4.2026", null },
            { "3-4-2026", null },
            { "20/05/26", null },
            { "20.5.26", null },
            { "20 May 26", null },
            { "May 26", null },
            { "May 20", null },
            { "20 May", null },
            { "05/26", null },
            { "26-05-20", null },
            { "29/02/2026", null },
            { "29 February 2026", null },
            { "2026-02-29", null },
            { "31 June 2026", null },
            { "31.6.2026", null },
            { "30 février 2024", null },
            { "2026-13", null },
            { "13/13/2026", null },
            { "00/05/2026", null },
            { "45351", null },
            { "46162", null },
            { "ca. 2024", null },
            { "2024?", null },
            { "about May 2026", null },
            { "Q2 2024", null },
            { "week 20 2026", null },
            { "spring 2024", null },
            { "20 Mayo 2026", null },
            { "20 Mai 2026 or later", null },
            { "2024-2025", null },
            { "May/June 2024", null },
            { "1899", null },
            { "20/05.2026", null },
            { "yesterday", null },
            { "2026-05-20 14:30", null },
            { "20052026", null },
            { "2O26", null },
            { "Fri 20 May 2026", null },
            { "١٢/٠٥/٢٠٢٦", null },
        };

    /// <summary>Sheet, heading and how a number is typed there, and what it is.</summary>
    public static TheoryData<string, string, string?> Numbers { get; } =
        new()
        {
            { "nominal diameter mm", "11", "11" },
            { "nominal diameter mm", "11.0 mm", "11.0" },
            { "nominal diameter mm", "11,0 mm", "11.0" },
            { "nominal diameter mm", "11mm", "11" },
            { "nominal diameter mm", "11 MM", "11" },
            { "nominal diameter mm", "1.1 cm", "11" },
            { "nominal diameter mm", "1,1 Zentimeter", "11" },
            { "nominal diameter mm", "0.011 m", "11" },
            { "nominal diameter mm", "11 millimètres", "11" },
            { "nominal diameter mm", "11\u00A0mm", "11" },
            { "minimum tail mm", "6 cm", "60" },
            { "minimum tail mm", "1 250 mm", "1250" },
            { "diameter tolerance percent", "10 %", "10" },
            { "diameter tolerance percent", "10%", "10" },
            { "diameter tolerance percent", "2,5 Prozent", "2.5" },
            { "diameter tolerance percent", "10 per cent", "10" },
            { "diameter tolerance percent", "10 pour cent", "10" },
            { "max use years", "3 years", "3" },
            { "max use years", "3 yrs", "3" },
            { "max use years", "3 Jahre", "3" },
            { "max use years", "3 ans", "3" },
            { "max use years", "36 months", "3" },
            { "max use years", "24 Monate", "2" },
            { "interval months", "6 months", "6" },
            { "interval months", "6 Monate", "6" },
            { "interval months", "1 year", "12" },
            { "interval months", "6 mois", "6" },
            { "max cleanings", "20 times", "20" },
            { "max cleanings", "20x", "20" },
            { "max cleanings", "20 mal", "20" },
            { "nominal diameter mm", "1,250", null },
            { "nominal diameter mm", "1,250 mm", null },
            { "nominal diameter mm", "11 kg", null },
            { "nominal diameter mm", "7/16 in", null },
            { "nominal diameter mm", "0.5 in", null },
            { "nominal diameter mm", "11 mm +", null },
            { "nominal diameter mm", "ca. 11 mm", null },
            { "nominal diameter mm", "11-12 mm", null },
            { "nominal diameter mm", "11 mn", null },
            { "nominal diameter mm", "11,2,5", null },
            { "nominal diameter mm", "eleven", null },
            { "minimum tail mm", "1.250,5 mm", null },
            { "max use years", "18 months", null },
            { "max use years", "20 months", null },
            { "max use years", "3 weeks", null },
            { "max use years", "3 j", null },
            { "max use years", "1000 days", null },
            { "max use years", "3-4 years", null },
            { "interval months", "26 weeks", null },
            { "interval months", "180 days", null },
            { "interval months", "half a year", null },
            { "diameter tolerance percent", "1 mm", null },
            { "diameter tolerance percent", "10 ‰", null },
            { "max cleanings", "20 years", null },
        };

    /// <summary>How a load is typed, and its number and unit; nothing where it is refused.</summary>
    public static TheoryData<string, string?> Loads { get; } =
        new()
        {
            { "23 kN", "23 kN" },
            { "23kN", "23 kN" },
            { "23 KN", "23 kN" },
            { "23,5 kN", "23.5 kN" },
            { "150 kg", "150 kg" },
            { "150 Kilogramm", "150 kg" },
            { "1 250 kg", "1250 kg" },
            { "1.5 t", "1.5 t" },
            { "2 Tonnen", "2 t" },
            { "2 persons", "2 persons" },
            { "1 Person", "1 persons" },
            { "2 personnes", "2 persons" },
            { "2300 daN", "23 kN" },
            { "22 000 N", "22 kN" },
            { "1,250 kg", null },
            { "500 lb", null },
            { "500 lbs", null },
            { "2 tons", null },
            { "23 kN MBS", null },
            { "150 kgf", null },
            { "2 x 100 kg", null },
            { "150 mm", null },
            { "150 kg / 2", null },
        };

    /// <summary>Sheet, heading, how a word is typed, and the word of the record; nothing where it is refused.</summary>
    public static TheoryData<string, string, string?> WordsTyped { get; } =
        new()
        {
            { "status", "In Use", "in-use" },
            { "status", "in service", "in-use" },
            { "status", "gelagert", "stored" },
            { "status", "perdu", "lost" },
            { "status", "inuse", null },
            { "status", "stord", null },
            { "purpose", "lifts persons", "lifts-persons" },
            { "purpose", "Heben von Personen", "lifts-persons" },
            { "purpose", "accessoire de levage", "accessory" },
            { "purpose", "acessory", null },
            { "basis", "6 months", "six-month" },
            { "basis", "halbjährlich", "six-month" },
            { "basis", "semestriel", "six-month" },
            { "basis", "Annual", "twelve-month" },
            { "basis", "6", null },
            { "basis", "monthly", null },
            { "conclusion", "Fit", "fit" },
            { "conclusion", "fit for use", "fit" },
            { "conclusion", "einsatzbereit", "fit" },
            { "conclusion", "Withdrawn", "withdraw" },
            { "conclusion", "ausgesondert", "withdraw" },
            { "conclusion", "à retirer", "withdraw" },
            { "conclusion", "pass", null },
            { "conclusion", "yes", null },
            { "conclusion", "OK", null },
            { "conclusion", "fit?", null },
            { "conclusion", "not fit", null },
            { "never used", "Ja", "yes" },
            { "never used", "nein", "no" },
            { "never used", "OUI", "yes" },
            { "never used", "x", null },
            { "never used", "1", null },
            { "never used", "maybe", null },
            { "safe working load unit", "Personen", "persons" },
            { "safe working load unit", "lb", null },
        };

    private static readonly string[] Limits =
    [
        "nominal diameter mm",
        "minimum tail mm",
        "diameter tolerance percent",
        "max use years",
        "interval months",
        "max cleanings",
    ];

    [Fact]
    public void The_tables_hold_a_hundred_and_twenty_ways_and_more() =>
        Assert.InRange(Dates.Count + Numbers.Count + Loads.Count + WordsTyped.Count, 120, 1_000);

    [Theory]
    [MemberData(nameof(Dates))]
    public void A_date(string typed, string? date)
    {
        foreach (var cord in (FitCord[])[FitCord.InWorkbook("obsolete on", typed), FitCord.InCsv("obsolete on", typed)])
        {
            Assert.Equal(date, cord.Record.Items[0].ObsoleteOn?.ToString());
            Assert.Equal(
                date is null ? "INT004"
                    : date == typed ? ""
                    : "INT080",
                cord.Codes
            );
            if (date is null)
                Assert.Equal(Outcome.Undetermined, cord.Outcome);
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_number_with_its_unit(string heading, string typed, string? number)
    {
        Assert.Contains(heading, Limits);
        foreach (var cord in (FitCord[])[FitCord.InWorkbook(heading, typed, "Models"), FitCord.InCsv(heading, typed, "Models")])
        {
            Assert.Equal(
                number is null ? null : decimal.Parse(number, CultureInfo.InvariantCulture),
                Limit(heading, cord.Record.Limits[0])
            );
            if (number is null)
                Assert.Equal(
                    ("", Outcome.Undetermined),
                    (
                        cord.Codes.Replace("INT053", "", StringComparison.Ordinal).Replace("INT003", "", StringComparison.Ordinal),
                        cord.Outcome
                    )
                );
            else
                Assert.Equal(number == typed ? "" : "INT080", cord.Codes);
        }
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void A_load_with_its_unit(string typed, string? load)
    {
        var cord = FitCord.InWorkbook((FitCord.Sheet, "safe working load", typed), (FitCord.Sheet, "safe working load unit", ""));
        var read = cord.Record.Items[0].SafeWorkingLoad;
        Assert.Equal(load, read?.Value is { } value ? $"{value.ToString("0.###", CultureInfo.InvariantCulture)} {read.Unit}" : null);
        if (load is null)
            Assert.Equal(Outcome.Undetermined, cord.Outcome);
    }

    [Theory]
    [InlineData("2 persons", "persons", "INT080")]
    [InlineData("2 Personen", "Person", "INT080")]
    [InlineData("150 kg", "persons", "INT002 INT080")]
    public void A_unit_beside_the_load_agrees_or_is_an_error(string typed, string unit, string codes)
    {
        var cord = FitCord.InWorkbook((FitCord.Sheet, "safe working load", typed), (FitCord.Sheet, "safe working load unit", unit));
        Assert.Equal(codes, cord.Codes);
        Assert.Equal(codes.Contains("INT002", StringComparison.Ordinal) ? Outcome.Undetermined : Outcome.Fit, cord.Outcome);
    }

    [Theory]
    [MemberData(nameof(WordsTyped))]
    public void A_word(string heading, string typed, string? word)
    {
        foreach (var cord in (FitCord[])[FitCord.InWorkbook(heading, typed), FitCord.InCsv(heading, typed)])
        {
            var (item, examination) = (cord.Record.Items[0], cord.Record.Examinations[0]);
            var read = heading switch
            {
                "status" => item.Status is { } s ? Words.Statuses.WordFor(s) : null,
                "purpose" => item.Purpose is { } p ? Words.Purposes.WordFor(p) : null,
                "basis" => examination.Basis is { } b ? Words.Bases.WordFor(b) : null,
                "conclusion" => examination.Conclusion is { } c ? Words.Conclusions.WordFor(c) : null,
                "never used" => item.NeverUsed is { } n ? (n ? "yes" : "no") : null,
                _ => item.SafeWorkingLoad?.Unit,
            };
            Assert.Equal(word, read);
            if (word is null)
                Assert.Equal(Outcome.Undetermined, cord.Outcome);
        }
    }

    /// <summary>Whatever is typed for an answer: a listed word for clear leaves the cord fit, anything else does not.</summary>
    [Theory]
    [InlineData("Clear", Outcome.Fit)]
    [InlineData("OK", Outcome.Fit)]
    [InlineData("in Ordnung", Outcome.Fit)]
    [InlineData("RAS", Outcome.Fit)]
    [InlineData("clear: washed", Outcome.Fit)]
    [InlineData("defect", Outcome.Withdraw)]
    [InlineData("DEFECT!!", Outcome.Withdraw)]
    [InlineData("Mangel", Outcome.Withdraw)]
    [InlineData("défaut", Outcome.Withdraw)]
    [InlineData("Zweifel", Outcome.Withdraw)]
    [InlineData("fail", Outcome.Withdraw)]
    [InlineData("not ok", Outcome.Withdraw)]
    [InlineData("claer", Outcome.Undetermined)]
    [InlineData("cleer", Outcome.Undetermined)]
    [InlineData("defekct", Outcome.Undetermined)]
    [InlineData("dfect", Outcome.Undetermined)]
    [InlineData("no defect", Outcome.Undetermined)]
    [InlineData("nok", Outcome.Undetermined)]
    [InlineData("n.i.O.", Outcome.Undetermined)]
    [InlineData("yes", Outcome.Undetermined)]
    [InlineData("ja", Outcome.Undetermined)]
    [InlineData("pass", Outcome.Undetermined)]
    [InlineData("x", Outcome.Undetermined)]
    [InlineData("✓", Outcome.Undetermined)]
    [InlineData("1", Outcome.Undetermined)]
    [InlineData("clear?", Outcome.Undetermined)]
    [InlineData("OK?", Outcome.Undetermined)]
    [InlineData("clear/defect", Outcome.Undetermined)]
    [InlineData("- clear", Outcome.Undetermined)]
    [InlineData("not clear", Outcome.Undetermined)]
    [InlineData("clear: defect at the eye", Outcome.Undetermined)]
    [InlineData("ok: slight doubt", Outcome.Undetermined)]
    [InlineData("OK, but worn", Outcome.Undetermined)]
    public void An_answer(string typed, Outcome outcome)
    {
        Assert.Equal(outcome, FitCord.InWorkbook("heat", typed).Outcome);
        Assert.Equal(outcome, FitCord.InCsv("heat", typed).Outcome);
    }

    /// <summary>JSON is written by programs: there a word is spelt as the format has it.</summary>
    [Theory]
    [InlineData("\"state\": \"no-sign\"", "\"state\": \"No sign\"", "INT005")]
    [InlineData("\"conclusion\": \"fit\"", "\"conclusion\": \"Fit\"", "INT005")]
    [InlineData("\"2025-05-06\"", "\"6 May 2025\"", "INT004")]
    [InlineData("\"maxUseYears\": 4", "\"maxUseYears\": \"4 years\"", "INT003")]
    public void Json_stays_strict(string old, string typed, string code)
    {
        var cord = FitCord.InJson(old, typed);
        Assert.Equal((code, Outcome.Undetermined), (cord.Codes, cord.Outcome));
    }

    [Fact]
    public void What_was_read_is_said_once_for_a_column_with_its_cells()
    {
        var read = new ReadWorkbook(
            new XlsxFile().Sheet(
                "Rope bridges",
                XlsxFile.Row("id", "manufactured", "heat", "cover-cut")
                    + XlsxFile.Row("B-1", "May 2024", "OK", "Clear")
                    + XlsxFile.Row("B-2", "2024-06", "ok", "CLEAR")
                    + XlsxFile.Row("B-3", "Juni 2024", "RAS", "clear")
            )
        );
        Assert.Empty(read.Places);
        Assert.Equal(
            [
                "in the column 'manufactured' of Rope bridges: 'May 2024' read as 2024-05 (B2); 'Juni 2024' read as 2024-06 (B4)",
                "in the column 'heat' of Rope bridges: 'OK' read as clear (C2); 'ok' read as clear (C3); 'RAS' read as clear (C4)",
            ],
            read.ReadAs.Order(StringComparer.Ordinal).Reverse().ToList()
        );
    }

    private static decimal? Limit(string heading, MakersLimits limits) =>
        heading switch
        {
            "nominal diameter mm" => limits.NominalDiameterMm,
            "minimum tail mm" => limits.MinTailMm,
            "diameter tolerance percent" => limits.DiameterTolerancePercent,
            "max use years" => limits.MaxUseYears,
            "interval months" => limits.IntervalMonths,
            _ => limits.MaxCleanings,
        };
}
