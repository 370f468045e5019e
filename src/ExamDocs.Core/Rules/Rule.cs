using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using FluentValidation;
using FluentValidation.Results;

namespace ExamDocs.Core.Rules;

/// <summary>A rule of the rule book, whatever it checks.</summary>
public interface IRule
{
    RuleInfo Info { get; }
}

/// <summary>What a rule found: its place and its words.</summary>
/// <param name="Member">JSON pointer relative to the case, for example /serial; empty for the case itself.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Hint">What to type instead, where more can be said than in the rule's own hint; null for that one.</param>
/// <param name="Item">Id of the item that it is about, where that is not the case's own.</param>
/// <param name="Cause">What would explain it; that a value at its own place was lost need not be said.</param>
public sealed record Fault(string Member, Message Message, Message? Hint = null, string? Item = null, PossibleCause? Cause = null);

/// <summary>One check with one code, for one kind of thing in the record.</summary>
/// <remarks>
/// It is a validator like any other of FluentValidation. A record has a hundred rules for each of thousands of things, so
/// <see cref="Check"/> asks for the faults themselves, without a validation's context and result for each rule and thing.
/// </remarks>
/// <typeparam name="T">The kind of thing that it checks.</typeparam>
public abstract class Rule<T> : AbstractValidator<T>, IRule
    where T : class, ICase
{
    private readonly List<Func<T, IEnumerable<Fault>>> _faults = [];

    protected Rule(RuleInfo info)
    {
        Info = info;
        RuleFor(subject => subject)
            .Custom(
                (subject, context) =>
                {
                    foreach (var fault in _faults.SelectMany(faults => faults(subject)))
                        context.AddFailure(new ValidationFailure(fault.Member, Info.Title) { ErrorCode = Info.Code, CustomState = fault });
                }
            );
    }

    public RuleInfo Info { get; }

    /// <summary>True where the rule applies to the case at all.</summary>
    protected virtual bool Concerns(T subject) => true;

    /// <summary>The place that the members of faults are relative to.</summary>
    protected virtual string PathOf(T subject) => subject.Path;

    /// <summary>The source of the rule for this case.</summary>
    protected virtual string SourceOf(T subject) => Info.Source;

    /// <summary>Adds what the rule finds wrong with a thing, if it applies to it.</summary>
    internal void Check(T subject, List<Finding> found)
    {
        if (!Concerns(subject))
            return;
        foreach (var faults in _faults)
        {
            var some = faults(subject);
            // Mostly there are none, and asking an empty list for its first one takes longer than seeing that it is empty.
            if (some is Fault[] { Length: 0 })
                continue;
            foreach (var fault in some)
                found.Add(FindingOf(fault, subject));
        }
    }

    private Finding FindingOf(Fault fault, T subject) =>
        Info.At(PathOf(subject) + fault.Member, fault.Message, fault.Hint, fault.Item ?? subject.ItemId) with
        {
            Source = SourceOf(subject),
            PossibleCause = fault.Cause,
        };

    /// <summary>Reports a fault where the text is missing.</summary>
    protected void Require(Func<T, string?> text, string member, Message message) =>
        Forbid(subject => text(subject) is null, member, _ => message);

    /// <summary>Reports a fault where the condition holds.</summary>
    protected void Forbid(Func<T, bool> wrong, string member, Func<T, Message> message) =>
        Each(subject => wrong(subject) ? [new Fault(member, message(subject))] : []);

    /// <summary>Reports every fault returned.</summary>
    protected void Each(Func<T, IEnumerable<Fault>> faults) => _faults.Add(faults);
}

/// <summary>A rule about the examinations that decide at this visit; history is left out.</summary>
public abstract class ExaminationRule(RuleInfo info) : Rule<ExaminationCase>(info)
{
    protected override bool Concerns(ExaminationCase subject) => subject.Decides;
}

/// <summary>
/// A rule that applies only where a regime of the examination asks for it in its data. Its source is the provision named there.
/// </summary>
public abstract class RegimeRule(RuleInfo info) : ExaminationRule(info)
{
    protected override bool Concerns(ExaminationCase subject) =>
        base.Concerns(subject) && subject.Regimes.Any(r => r.Asks(Info.Code, subject.On));

    protected override string SourceOf(ExaminationCase subject) =>
        subject.Regimes.Select(r => r.SourceOf(Info.Code, subject.On)).FirstOrDefault(s => s is not null) ?? Info.Source;
}
