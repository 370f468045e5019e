using ExamDocs.Core.Regimes;
using NodaTime;

namespace ExamDocs.Templates.Shared.Wording.LawAndSources;

/// <inheritdoc />
internal sealed class English : LawAndSourcesPhrases
{
    public override string Heading => "Law and sources";
    public override string Law => "Law";
    public override string Interval => "Interval";
    public override string Keep => "Retention";
    public override string FromMemory => "Not checked";
    public override string NotConfirmed => "Not confirmed";
    public override string AddedByUser => "Added";
    public override string KeepNotKnown => "How long this report has to be kept is not in the data of this regime.";

    public override string EarlierRecords => "Earlier records";

    public override string Asked(string register, LocalDate? since) =>
        "Withdrawals and examinations from before were looked for in register "
        + $"{register}{(since is { } day ? $", kept since {Printed.Day(day)}" : "")}. What was never recorded there is not "
        + "known.";

    public override string Added(string file) => $"This regime is not part of the program: it was added by the user, from {file}";

    public override string UsersOwn => "a regime of the user's own";

    public override string AddedShort(string file) => $"added by the user from {file}";

    public override string AddedCategory(string name, string file) =>
        $"The criteria for “{name}” are not part of the program: they were added by the user, from {file}.";

    public override string Confidence(Confidence confidence) =>
        confidence switch
        {
            Core.Regimes.Confidence.Read => "read in the source",
            Core.Regimes.Confidence.UnofficialCopy => "read in an unofficial copy",
            Core.Regimes.Confidence.FromMemory => "wording not checked against the original",
            Core.Regimes.Confidence.Computed => "worked out from what was read",
            Core.Regimes.Confidence.CommonPractice => "common practice",
            _ => throw new ArgumentOutOfRangeException(nameof(confidence)),
        };

    public override string Sourced(string text, string source, Confidence confidence) => $"{text} ({source}; {Confidence(confidence)})";

    public override string IntervalLine(int months, bool lessThan, string what, bool byBasis, string source, Confidence confidence)
    {
        var line = $"{(lessThan ? "less than" : "at most")} {Printed.Count(months)} months {what}";
        return byBasis ? $"{line}, as recorded" : Sourced(line, source, confidence);
    }

    public override string KeepLine(KeepUntil keep, string rule, string source) =>
        Sourced(
            keep switch
            {
                { Until: { } until } => $"until {Printed.Day(until)}: {rule}",
                { AtLeastUntil: { } least } => $"{rule}, so not before {Printed.Day(least)}",
                _ => rule,
            },
            source,
            keep.Confidence
        );

    public override string KeepNotFound(string rule, string source, Confidence confidence) =>
        $"How long this report has to be kept: {Sourced(rule, source, confidence)}.";

    public override string KeepThis(IReadOnlyList<string> lines) =>
        lines.Count == 1
            ? $"Keep this report {lines[0]}."
            : $"Keep this report as long as the longest of these asks: {string.Join("; ", lines)}.";

    public override string ParticularsFromMemory(IEnumerable<string> sources) =>
        $"What the report has to hold by {string.Join("; ", sources)}: wording not checked against the original.";

    public override string Authority(Recipient whom, string source, Confidence confidence) =>
        LawAndSourcesPhrases.Languages.English.Sourced(Printed.Sentence(whom.Words()), source, confidence);
}
