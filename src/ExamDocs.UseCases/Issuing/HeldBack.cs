using ExamDocs.Core.Findings;
using ExamDocs.Documents.ReadingBack;
using ExamDocs.Templates;

namespace ExamDocs.UseCases.Issuing;

/// <summary>What a run of prints holds back, and what it says about it.</summary>
internal sealed class HeldBack
{
    private readonly List<string> _unprintable = [];
    private readonly List<string> _remarks = [];
    private readonly List<Refusal> _refused = [];
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);

    /// <summary>Sentences about what could not be printed as it was typed.</summary>
    public IReadOnlyList<string> Unprintable => _unprintable;

    /// <summary>Sentences that warn and hold nothing back.</summary>
    public IReadOnlyList<string> Remarks => _remarks;

    /// <summary>Items whose document was held back for that.</summary>
    public IReadOnlyList<Refusal> Refused => _refused;

    /// <summary>Takes over what was held back where the rest of the visit was printed, so that nothing rests on it here.</summary>
    public void Know(IEnumerable<Refusal> elsewhere) => _refused.AddRange(elsewhere);

    /// <summary>Says something once, however often it is found.</summary>
    public void Remark(string sentence)
    {
        if (_said.Add(sentence))
            _remarks.Add(sentence);
    }

    /// <summary>Holds a document back, unless it tells of a danger, and says so.</summary>
    public void Tell(DocumentJob job, RuleInfo rule, string what) => Tell(job, rule, what, isHeldBack: !job.IsWarning);

    /// <summary>Holds back what the browser does not print at all, also where it tells of a danger.</summary>
    public void TellUnprinted(DocumentJob job, string why) => Tell(job, PrintRules.BrowserPrints, why, isHeldBack: true);

    private void Tell(DocumentJob job, RuleInfo rule, string what, bool isHeldBack)
    {
        if (isHeldBack)
            _refused.AddRange(job.Items.Select(i => new Refusal(i.Item.Id ?? "", [rule.Code], WhatIs(job))));
        var ending = isHeldBack ? "it is held back" : "it is printed all the same, because it warns of a danger";
        _unprintable.Add($"{rule.Code}: {job.Type.Kind} of {Names(job)}: {what}; {ending}. Hint: {rule.Hint}");
    }

    /// <inheritdoc cref="Tell(DocumentJob, RuleInfo, string)"/>
    public void Tell(DocumentJob job, RuleInfo rule, IReadOnlyList<PrintFault> faults) => Tell(job, rule, Sentence(faults));

    /// <summary>Says once where another person signs than the record names.</summary>
    public void TellOfSigner(DocumentJob job)
    {
        if (
            job is { SignedBy: { } person, Signer: { } signer }
            && !string.Equals(person.Trim(), signer.Key.Name, StringComparison.OrdinalIgnoreCase)
        )
            Remark($"{person} is to sign by the record, and the key is of {signer.Key.Name}: both names are printed");
    }

    /// <summary>Holds one item back out of a schedule.</summary>
    public void TellOfOne(DocumentJob job, RuleInfo rule, string? item, string text)
    {
        _refused.Add(new Refusal(item ?? "", [rule.Code], WhatIs(job)));
        _unprintable.Add(
            $"{rule.Code}: {job.Type.Kind} of {item}: {text}; it is refused alone, and the other items are printed. Hint: {rule.Hint}"
        );
    }

    /// <summary>Whether the label has room for all that it must say; what it lacks is said.</summary>
    public bool Fits(DocumentJob job)
    {
        var shortfalls = job.Language.In(job.Shortfalls);
        foreach (var (rule, text) in shortfalls.Where(s => s.Rule.Severity is not Severity.Error))
            _remarks.Add($"{rule.Code}: {job.Type.Kind} of {Names(job)}: {text}. Hint: {rule.Hint}");
        var errors = shortfalls.Where(s => s.Rule.Severity is Severity.Error).ToList();
        if (errors.Count > 0)
            Tell(job, errors[0].Rule, string.Join("; ", errors.Select(e => e.Text)));
        return errors.Count == 0;
    }

    /// <summary>A label that says when to examine again says that the item was reported as fit.</summary>
    public bool HoldsReportOf(DocumentJob job) =>
        job.Type == DocumentTypes.DueLabel
        && job.Items.Any(i => _refused.Exists(r => string.Equals(r.Item, i.Item.Id, StringComparison.Ordinal)));

    private static Message WhatIs(DocumentJob job) =>
        job.Type == DocumentTypes.DueLabel ? $"next-examination label"
        : job.Type == DocumentTypes.QuarantineLabel ? $"do-not-use label"
        : job.Type == DocumentTypes.Notice ? $"notice of defect"
        : job.Type == DocumentTypes.EquipmentRecord ? $"equipment record"
        : job.Type == DocumentTypes.CheckSheet ? $"check sheet"
        : job.Type == DocumentTypes.Evidence ? $"evidence file"
        : (Message)$"report or certificate";

    private static string Names(DocumentJob job) =>
        $"{string.Join(", ", job.Items.Take(3).Select(i => i.Item.Id))}{(job.Items.Count > 3 ? " and others" : "")}";

    private static string Sentence(IReadOnlyList<PrintFault> faults) =>
        string.Join("; ", faults.Take(3).Select(f => f.ToString())) + (faults.Count > 3 ? " and more" : "");
}
