using ExamDocs.Core.Determination;
using ExamDocs.Templates.Shared.Wording;
using ExamDocs.Templates.Shared.Wording.Codes;

namespace ExamDocs.Templates.Shared;

/// <summary>Whom to ring about an item.</summary>
/// <param name="Name">A firm or a person.</param>
/// <param name="Telephone">Null where neither the letterhead nor the record has a number.</param>
public sealed record WhomToRing(string Name, string? Telephone)
{
    /// <summary>
    /// The issuer by the letterhead, else the employer by the record; without any number, the issuer or the examiner by name.
    /// </summary>
    public static WhomToRing Of(DocumentIdentity identity, DeterminedVisit visit, DeterminedItem item)
    {
        var (head, employer) = (identity.Letterhead, visit.Record.Visit.Employer);
        if (Filled(head?.Telephone) is { } issuers)
            return new(head!.Name, issuers);
        if (Filled(employer?.Telephone) is { } employers)
            return new(Printed.Text(employer!.Name), employers);
        return new(head?.Name ?? Printed.Text(visit.Person(item.Examination?.Examiner)?.Name), null);
    }

    /// <summary>In words, with the number first: what is cut off at the end is never the number.</summary>
    public string Line => Telephone is { } number ? CodePhrases.Current.Ring(number, Name) : CodePhrases.Current.Ask(Name);

    /// <summary>The same without the name, where there is a number.</summary>
    public string ShortLine => Telephone is { } number ? CodePhrases.Current.Ring(number) : CodePhrases.Current.Ask(Name);

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text;
}
