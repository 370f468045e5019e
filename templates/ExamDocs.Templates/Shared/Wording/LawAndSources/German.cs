using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.LawAndSources;

/// <inheritdoc />
internal sealed class German : LawAndSourcesPhrases
{
    public override string Heading => "Recht und Quellen";
    public override string Law => "Recht";
    public override string Interval => "Frist";
    public override string Keep => "Aufbewahrung";
    public override string FromMemory => "Nicht geprüft";
    public override string NotConfirmed => "Nicht bestätigt";
    public override string AddedByUser => "Hinzugefügt";
    public override string KeepNotKnown => "Wie lange dieser Bericht aufzubewahren ist, steht nicht in den Daten dieses Regelwerks.";

    public override string EarlierRecords => "Frühere Aufzeichnungen";

    public override string Asked(string register, LocalDate? since) =>
        $"Frühere Aussonderungen und Prüfungen wurden im Register {register} "
        + $"gesucht{(since is { } day ? $", geführt seit {Printed.Day(day)}" : "")}. Was dort nie erfasst wurde, ist nicht "
        + "bekannt.";

    public override string Added(string file) => $"Dieses Regelwerk gehört nicht zum Programm: der Anwender hat es hinzugefügt, aus {file}";

    public override string UsersOwn => "ein eigenes Regelwerk des Anwenders";

    public override string AddedShort(string file) => $"vom Anwender hinzugefügt aus {file}";

    public override string AddedCategory(string name, string file) =>
        $"Die Kriterien für „{name}“ gehören nicht zum Programm: der Anwender hat sie hinzugefügt, aus {file}.";

    public override string Confidence(Confidence confidence) =>
        confidence switch
        {
            Core.Regimes.Confidence.Read => "in der Quelle gelesen",
            Core.Regimes.Confidence.UnofficialCopy => "in einer nicht amtlichen Abschrift gelesen",
            Core.Regimes.Confidence.FromMemory => "Wortlaut nicht am Original geprüft",
            Core.Regimes.Confidence.Computed => "aus Gelesenem errechnet",
            Core.Regimes.Confidence.CommonPractice => "übliche Praxis",
            _ => throw new ArgumentOutOfRangeException(nameof(confidence)),
        };

    public override string Sourced(string text, string source, Confidence confidence) => $"{text} ({source}; {Confidence(confidence)})";

    public override string IntervalLine(int months, bool lessThan, string what, bool byBasis, string source, Confidence confidence)
    {
        var line = $"{(lessThan ? "weniger als" : "höchstens")} {Months(months)} {what}";
        return byBasis ? $"{line}, wie aufgezeichnet" : Sourced(line, source, confidence);
    }

    public override string KeepLine(KeepUntil keep, string rule, string source) =>
        Sourced(
            keep switch
            {
                { Until: { } until } => $"bis {Printed.Day(until)}: {rule}",
                { AtLeastUntil: { } least } => $"{rule}, also nicht kürzer als bis {Printed.Day(least)}",
                _ => rule,
            },
            source,
            keep.Confidence
        );

    public override string KeepNotFound(string rule, string source, Confidence confidence) =>
        $"Wie lange dieser Bericht aufzubewahren ist: {Sourced(rule, source, confidence)}.";

    public override string KeepThis(IReadOnlyList<string> lines) =>
        lines.Count == 1
            ? $"Diesen Bericht aufbewahren: {lines[0]}."
            : $"Diesen Bericht so lange aufbewahren, wie es die längste dieser Regeln verlangt: {string.Join("; ", lines)}.";

    public override string ParticularsFromMemory(IEnumerable<string> sources) =>
        $"Was der Bericht enthalten muss, nach {string.Join("; ", sources)}: Wortlaut nicht am Original geprüft.";

    private static string Months(int months) => months == 1 ? "1 Monat" : $"{Printed.Count(months)} Monate";

    public override string Authority(Recipient whom, string source, Confidence confidence) =>
        LawAndSourcesPhrases.Languages.German.Sourced(
            whom switch
            {
                Recipient.Employer => "Der Arbeitgeber",
                Recipient.Owner => "Der Eigentümer (Vermieter, Leasinggeber)",
                Recipient.HealthAndSafetyExecutive => "Health and Safety Executive (britische Arbeitsschutzbehörde)",
                Recipient.AuthorityForThePremises => "Die Aufsichtsbehörde des Ortes, an dem geprüft wurde",
                Recipient.EnforcingAuthority => "Die Aufsichtsbehörde",
                _ => throw new ArgumentOutOfRangeException(nameof(whom)),
            },
            source,
            confidence
        );
}
