namespace ExamDocs.Templates.Shared.Wording.Corrections;

/// <summary>Why a document takes the place of another, in words that follow "Replaces R-2026-000001:".</summary>
public abstract class CorrectionPhrases
{
    public static InEachLanguage<CorrectionPhrases> Languages { get; } = new(new English(), new German(), new French());

    public abstract string Letterhead { get; }
    public abstract string ElectronicSignature { get; }
    public abstract string ReadingDistance { get; }

    /// <summary>What records of other visits say of the items.</summary>
    public abstract string OtherRecords { get; }

    /// <summary>The user's own categories and regimes.</summary>
    public abstract string OwnRules { get; }

    /// <summary>The word for a member of the record format, for example items/serial.</summary>
    /// <returns>The member itself where it has no word.</returns>
    public string Word(string member) => Words.TryGetValue(member, out var word) ? word : member;

    /// <param name="what">What differs.</param>
    /// <param name="whose">Ids of items, names of people or models.</param>
    public abstract string Of(string what, string whose);

    /// <param name="named">What is named.</param>
    /// <param name="more">How many are not; 2 or more.</param>
    public abstract string AndMore(string named, int more);

    protected abstract IReadOnlyDictionary<string, string> Words { get; }
}
