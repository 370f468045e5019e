using System.Text;
using System.Text.RegularExpressions;

namespace ExamDocs.Intake.Vocabulary;

/// <summary>
/// Words by which a text that is not read may say how an item is: such a text is never passed over in silence. In three
/// languages, and rather one too many than one too few.
/// </summary>
internal static partial class AnswerWords
{
    /// <summary>The beginnings of words that say something bad.</summary>
    private const string AdverseStems =
        "defe|doubt|withdr|fail|damag|unfit|unsafe|reject|condemn|quarant|scrap|retire|broken|crack|frayed|worn|danger|do not use"
        + "|mangel|mängel|mangelh|zweifel|fraglich|schaden|schadhaft|schäd|beschäd|gerissen|riss\\b|bruch\\b|gesperrt"
        + "|aussonder|ausgesonder|untauglich"
        + "|unbrauchbar|gefahr|gefähr|verschliss|abgenutzt|nicht bestanden|durchgefallen|außer betrieb"
        + "|défaut|defaut|défect|défaill|dout|endommag|retir|rebut|refus|échec|échou|inapte|cassé|fissur|hors service|dangereu|usé"
        + "|non conforme|ne pas utiliser|quarantaine|abîmé"
        + "|destroy|bent\\b|cut\\b|cuts\\b|sawn|torn\\b|tear\\b|snapped|split\\b"
        + "|deform|corro|rust|loose|fault|expir|recall|unserviceable|unusable"
        + "|not (fit|ok|pass|good|safe|to be used|in use|for use|usable|serviceable)|out of (service|use|date)|dispos|binned|bin\\b|lost\\b"
        + "|missing|stolen|oos\\b|u/s\\b|no go|ko\\b|nok\\b|stiff|fused|glaz|burn|melt|cracking|does not|must be|replace|beyond|kondem"
        + "|kaputt|gebroch|rissig|haarriss|verbog|schrott|entsorg|ausgemuster"
        + "|abgelegt|ablegereif|abgelauf|ersetzen|rückruf|rueckruf|nicht\\b"
        + "|maengel|schaed|beschaed|gefaehr|ausser betrieb|ausser dienst|außer dienst"
        + "|ersetz|zerstör|vernicht|verlor|fehlt\\b|nio\\b|n\\.i\\.o"
        + "|rost|lose\\b|reparatur|coupé|déchir|réform|périm|hors d.usage|hs\\b"
        + "|déform|usee|ne pas |perdu|manqu|rouill|tordu|détruit|rappel";

    /// <summary>Ends of compound words, which other words run into.</summary>
    private const string AdverseEnds = "riss|brüche?|bruch|schaden|schäden|defekt|mangel|mängel|verschleiß|verschleiss|schrott";

    /// <summary>What stands alone in a cell and is an answer to something.</summary>
    private static readonly string[] Alone =
    [
        "clear",
        "noted",
        "no-sign",
        "not-examined",
        "fit",
        "ok",
        "o.k.",
        "okay",
        "nok",
        "n.i.o.",
        "pass",
        "passed",
        "bestanden",
        "i.o.",
        "in ordnung",
        "geprüft",
        "checked",
        "examined",
        "inspected",
        "conforme",
        "ras",
        "contrôlé",
        "vérifié",
        "réussi",
        "good",
        "bad",
        "poor",
        "gut",
        "schlecht",
        "bon",
        "mauvais",
    ];

    private static readonly HashSet<string> Answers = Alone
        .Concat(AnswerSynonyms.All.Where(s => s.Word is not ("yes" or "no" or "not-applicable")).SelectMany(s => s.Others))
        .Select(Synonyms.Key)
        .ToHashSet(StringComparer.Ordinal);

    private static readonly HashSet<string> Good = Answers
        .Where(a => !IsAdverse(a))
        .Append("yes")
        .Append("ja")
        .Append("oui")
        .Except(["noted", "no sign", "not examined", "bad", "poor", "schlecht", "mauvais", "nok", "n.i.o."], StringComparer.Ordinal)
        .ToHashSet(StringComparer.Ordinal);

    /// <summary>Whether a word in it says something bad of an item.</summary>
    public static bool IsAdverse(string text) => Adverse().IsMatch(text) || Adverse().IsMatch(Plain(text));

    /// <summary>Letters put together with their marks, words parted by one blank, and nothing that cannot be seen.</summary>
    private static string Plain(string text) => Parting().Replace(Ascii.IsValid(text) ? text : Composed(Unseen().Replace(text, "")), " ");

    /// <summary>Half of a character pair cannot be put together with anything: the sign for it takes its place.</summary>
    private static string Composed(string text) => string.Concat(text.EnumerateRunes()).Normalize(NormalizationForm.FormKC);

    /// <summary>Whether it may be an answer: a bad word anywhere, or a listed answer alone.</summary>
    public static bool IsIn(string text) => IsAdverse(text) || Answers.Contains(Synonyms.Key(text));

    /// <summary>Whether the whole of it says that something is good, and nothing more.</summary>
    public static bool IsGood(string text) => Good.Contains(Synonyms.Key(text));

    [GeneratedRegex(
        @"(?<!\p{L})(" + AdverseStems + @")|\p{L}(" + AdverseEnds + @")(?!\p{L})",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Adverse();

    [GeneratedRegex(@"[\s_\u2010-\u2015-]+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Parting();

    /// <summary>Soft hyphens, with the break after them, and signs without width.</summary>
    [GeneratedRegex(@"\u00AD\s*|[\u200B-\u200F\u2060\uFEFF]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Unseen();
}
