using System.Globalization;
using System.Text;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Findings;
using ExamDocs.Core.Identity;

namespace ExamDocs.Core.Rules.Identity;

public sealed class IdentityHasOneAlphabet : Rule<ItemCase>
{
    public IdentityHasOneAlphabet()
        : base(
            new RuleInfo(
                "IDN007",
                Severity.Error,
                "An identity uses one alphabet, digits from 0 to 9, and no letters that only look like Latin ones",
                "A Cyrillic А and a Latin A look the same on paper and are two different numbers to a search.",
                $"Type the identity again on one keyboard layout.",
                "Unicode Technical Standard 39 (mixed scripts)"
            )
        ) =>
        Each(i =>
            Identities(i)
                // All letters of ASCII are Latin ones.
                .Where(x => x.Text is not null && !Ascii.IsValid(x.Text))
                .Select(x =>
                    IsMixed(x.Text!) ? new Fault(x.Member, $"'{x.Text}' mixes letters of two alphabets")
                    : IsDisguised(x.Text!)
                        ? new Fault(x.Member, $"'{x.Text}' is made of Greek or Cyrillic letters that all look like Latin ones")
                    : Odd(x.Text!) is { } odd ? new Fault(x.Member, odd)
                    : null
                )
                .OfType<Fault>()
        );

    private static IEnumerable<(string Member, string? Text)> Identities(ItemCase i) =>
        [
            ("/id", i.Item.Id),
            ("/serial", i.Item.Serial),
            ("/ownersMark", i.Item.OwnersMark),
            ("/partNumber", i.Item.PartNumber),
            ("/fittedTo", i.Item.FittedTo),
        ];

    private static bool IsMixed(string text) => text.EnumerateRunes().Where(Rune.IsLetter).Select(Alphabet).Distinct().Skip(1).Any();

    private static bool IsDisguised(string text)
    {
        var letters = text.Where(char.IsLetter).ToList();
        return letters.Count > 0 && letters.TrueForAll(LookAlike.LooksLatin);
    }

    /// <summary>A character that can be taken for another, or for none; null where all are as they look.</summary>
    private static Message? Odd(string text)
    {
        var normal = Folded.Whole(text).Normalize(NormalizationForm.FormKC);
        foreach (var rune in normal.EnumerateRunes().Where(r => !r.IsAscii))
        {
            var category = Rune.GetUnicodeCategory(rune);
            var named = string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}");
            if (LookAlike.IsMark(category))
                return $"'{text}' has the sign {named} on, under or around another one";
            if (rune.Value == LookAlike.BlankOfBraille)
                return $"'{text}' has the sign {named}, which is a blank in print";
            if (Rune.IsNumber(rune))
                return $"'{text}' has the digit {named}, which is none of 0 to 9";
            if (Rune.IsLetter(rune) && Alphabet(rune) is 'O' && !LookAlike.IsUnlikeLatin(rune))
                return $"'{text}' has the letter {named} of another alphabet, which has letters that look like Latin ones";
        }
        return null;
    }

    /// <summary>
    /// Latin, Greek and Cyrillic letters are mistaken for each other; all other letters count as one alphabet, and rare Latin ones with
    /// them: no keyboard of Europe has those that are not a letter of ASCII with a mark.
    /// </summary>
    private static char Alphabet(Rune rune) =>
        rune.Value switch
        {
            < 0x0180 => 'L',
            < 0x0250 or >= 0x1E00 and < 0x1F00 when char.IsAscii(Folded.Apart(rune.ToString())[0]) => 'L',
            >= 0x0370 and < 0x0400 or >= 0x1F00 and < 0x2000 => 'G',
            >= 0x0400 and < 0x0530 => 'C',
            _ => 'O',
        };
}
