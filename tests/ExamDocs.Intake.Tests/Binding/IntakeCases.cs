namespace ExamDocs.Intake.Tests.Binding;

/// <summary>For every code of reading, and for every kind of slip it names, a case.</summary>
internal static class IntakeCases
{
    private static readonly string TooLong = new('x', 2_001);

    private static readonly string TooLongIdentity = new('9', 81);

    public static IReadOnlyList<IntakeCase> All { get; } =
    [
        new("INT001", "/visit/refrence", "\"reference\": \"V-1\"", "\"refrence\": \"V-1\""),
        new("INT001", "/items/0/serialNumber", "\"neverUsed\": false", "\"serialNumber\": \"1\""),
        new("INT001", "/examinations/0/observations/0/stat", "\"state\": \"clear\"", "\"stat\": \"clear\""),
        new("INT001", "/remarks", "\"limits\": [", "\"remarks\": \"none\", \"limits\": ["),
        new("INT001", "/a~1b~0c", "\"limits\": [", "\"a/b~c\": 1, \"limits\": ["),
        new("INT002", "/examinations/0/observations/0/state", "\"state\": \"clear\"", "\"state\": \"clear\", \"state\": \"defect\""),
        new(
            "INT002",
            "/items/0/manufactured",
            "\"manufactured\": \"2024-02\"",
            "\"manufactured\": \"2024-02\", \"manufactured\": \"2014-02\""
        ),
        new("INT002", "/limits", "\"limits\": [", "\"limits\": [], \"limits\": ["),
        new("INT003", "/visit/reference", "\"V-1\"", "17"),
        new("INT003", "/people/0/selfEmployed", "\"selfEmployed\": true", "\"selfEmployed\": \"yes\""),
        new("INT003", "/items/0/manufactured", "\"2024-02\"", "2024"),
        new("INT003", "/items/0/safeWorkingLoad", "{ \"value\": 140, \"unit\": \"kg\" }", "\"140 kg\""),
        new("INT003", "/items/0/standards", "[\"EN 358\"]", "\"EN 358\""),
        new("INT003", "/limits/0/maxUseYears", "\"maxUseYears\": 6", "\"maxUseYears\": \"6\""),
        new("INT003", "/examinations/0/observations/0", "{ \"criterion\": \"identity\", \"state\": \"clear\" }", "\"clear\""),
        new("INT003", "/examinations/0/diameters/0/readingsMm/1", "[11.1, 11.0]", "[11.1, null]"),
        new("INT004", "/visit/examinedOn", "\"2026-05-11\"", "\"11/05/2026\""),
        new("INT004", "/visit/examinedOn", "\"2026-05-11\"", "\"2026-05\""),
        new("INT004", "/visit/examinedOn", "\"2026-05-11\"", "\"2026-02-29\""),
        new("INT004", "/items/0/manufactured", "\"2024-02\"", "\"2024-13\""),
        new("INT004", "/items/0/manufactured", "\"2024-02\"", "\"24\""),
        new("INT005", "/examinations/0/observations/0/state", "\"clear\"", "\"clera\""),
        new("INT005", "/examinations/0/observations/0/state", "\"clear\"", "\"Clear\""),
        new("INT005", "/items/0/safeWorkingLoad/unit", "\"kg\"", "\"lb\""),
        new("INT005", "/items/0/purpose", "\"lifts-persons\"", "\"lifts persons\""),
        new("INT006", "/limits/0/maxUseYears", "\"maxUseYears\": 6", "\"maxUseYears\": 600"),
        new("INT006", "/limits/0/maxUseYears", "\"maxUseYears\": 6", "\"maxUseYears\": 6.5"),
        new("INT006", "/items/0/safeWorkingLoad/value", "140", "-140"),
        new("INT006", "/examinations/0/diameters/0/readingsMm/0", "11.1", "1e400"),
        new("INT007", "/items/0/description", "\"Harness\"", "\"Har\\u202Eness\""),
        new("INT007", "/items/0/description", "\"Harness\"", "\"Har\\u0000ness\""),
        new("INT007", "/items/0/id", "\"id\": \"A-1\"", "\"id\": \"A\\u200B-1\""),
        new("INT007", "/items/0/description", "\"Harness\"", "\"Har\\uFFFDness\""),
        new("INT008", "/format", "\"examdocs/1\"", "\"examdocs/2\""),
        new("INT008", "/format", "\"format\": \"examdocs/1\",", ""),
        new("INT009", "/items/0/description", "\"Harness\"", $"\"{TooLong}\""),
        new("INT009", "/items/0/id", "\"id\": \"A-1\"", $"\"id\": \"{TooLongIdentity}\""),
    ];
}
