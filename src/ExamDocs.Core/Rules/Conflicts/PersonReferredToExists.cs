using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Rules.Conflicts;

public sealed class PersonReferredToExists : Rule<VisitCase>
{
    public PersonReferredToExists()
        : base(
            new RuleInfo(
                "CON003",
                Severity.Error,
                "Every person referred to is in the record",
                "Who examined, signed or released must be known by name, address and qualifications.",
                $"Type the id of a person of this record, or add the person.",
                "SI 1998/2307 Schedule 1 paras 9 and 10 (from memory)"
            )
        ) =>
        Each(v =>
            References(v.Context)
                .Where(r => r.Id is not null && !v.Context.KnowsPerson(r.Id))
                .Select(r => Missing(r.Path, r.Id!, v.Context))
        );

    /// <summary>Empty, because the faults have whole pointers: the rule goes through every list.</summary>
    protected override string PathOf(VisitCase subject) => "";

    private static Fault Missing(string path, string id, RecordContext context) =>
        new(
            path,
            $"there is no person '{id}' in this record",
            SpellingSuggestion.Of(id, context.PersonIds) is { } near ? (Message)$"Did you mean '{near}'?" : null
        );

    private static IEnumerable<(string Path, string? Id)> References(RecordContext c) =>
        c
            .Examinations.Zip(c.Recorded.Examinations)
            .SelectMany(e =>
                new[]
                {
                    ($"{e.First.Path}/examiner", e.Second.Examiner),
                    ($"{e.First.Path}/author", e.Second.Author),
                    ($"{e.First.Path}/authenticatedBy", e.Second.AuthenticatedBy),
                }
            )
            .Prepend(("/visit/examiner", c.Recorded.Visit.Examiner))
            .Concat(
                c.Renewals.SelectMany(r =>
                    new[]
                    {
                        ($"{r.Path}/doneBy", r.Row.DoneBy),
                        ($"{r.Path}/supervisedBy", r.Row.SupervisedBy),
                        ($"{r.Path}/retiedBy", r.Row.RetiedBy),
                    }
                )
            )
            .Concat(c.Releases.Select(r => ($"{r.Path}/by", r.Row.By)));
}
