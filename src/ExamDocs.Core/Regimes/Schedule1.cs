namespace ExamDocs.Core.Regimes;

/// <summary>One particular that a report of thorough examination has to hold.</summary>
/// <param name="Paragraph">Number as cited, for example 8(c).</param>
/// <param name="Words">What has to be stated, in our own words.</param>
/// <param name="FromMemory">True where the official text was not read.</param>
public sealed record Particular(string Paragraph, string Words, bool FromMemory = false)
{
    /// <summary>The top-level paragraph, 1 to 11.</summary>
    public int Number { get; } = int.Parse(Paragraph.Split('(')[0], System.Globalization.CultureInfo.InvariantCulture);

    public string Source => $"SI 1998/2307 Sch 1 para {Paragraph}{(FromMemory ? " (from memory)" : "")}";
}

/// <summary>
/// Contents of a report of thorough examination in the law's order: SI 1998/2307, Schedule 1, as made. Paragraphs 1 to
/// 8(c) were read there; 8(d) to 11 are from memory.
/// </summary>
public static class Schedule1
{
    /// <summary>Every particular, in the order of the schedule.</summary>
    public static IReadOnlyList<Particular> Particulars { get; } =
    [
        new("1", "Employer for whom the thorough examination was made: name and address"),
        new("2", "Address of the premises where it was made"),
        new("3", "What identifies the equipment, with its date of manufacture where known"),
        new("4", "Date of the last thorough examination"),
        new("5", "Safe working load, for the last examined configuration where it depends on one"),
        new("6(a)", "Whether this is the first examination after installation or after assembly at a new site"),
        new("6(b)", "If so, that it was installed correctly and would be safe to operate, where that is the case"),
        new("7(a)", "Otherwise the basis: six months, twelve months, examination scheme or exceptional circumstances"),
        new("7(b)", "And that it would be safe to operate, where that is the case"),
        new("8(a)", "Each part with a defect that is or could become a danger to persons, and a description of the defect"),
        new("8(b)", "Repair, renewal or alteration needed to remedy a defect that is a danger"),
        new("8(c)", "For a defect that could become a danger: the time by which it could, and the repair, renewal or alteration needed"),
        new("8(d)", "Latest date for the next thorough examination", FromMemory: true),
        new("8(e)", "Particulars of any test made as part of the examination", FromMemory: true),
        new("8(f)", "Date of the thorough examination", FromMemory: true),
        new("9", "Maker of the report: name, address and qualifications; self-employed, or the employer's name and address", FromMemory: true),
        new("10", "Name and address of the person who signs or authenticates it for its author", FromMemory: true),
        new("11", "Date of the report", FromMemory: true),
    ];
}
