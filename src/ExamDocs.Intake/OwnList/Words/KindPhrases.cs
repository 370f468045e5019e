using ExamDocs.Core.Regimes;

namespace ExamDocs.Intake.OwnList.Words;

/// <summary>A category that words mean.</summary>
/// <param name="Category">Its id.</param>
/// <param name="Sure">How sure that is.</param>
internal sealed record KindMeant(string Category, Sureness Sure)
{
    /// <summary>The words that say so, as they are compared.</summary>
    public string Phrase { get; init; } = "";
}

/// <summary>
/// Which category of kit words mean, in English, German and French: what is built in, and the names of the user's own
/// categories. Common practice, no source.
/// </summary>
internal sealed class KindPhrases
{
    private readonly PhraseBook<KindMeant> _book = new();

    public KindPhrases(KnownRules rules)
    {
        foreach (var category in rules.Categories)
            _book.Add(new KindMeant(category.Id, Sureness.Yes), category.Id, category.Name, category.Plural);
        foreach (var (category, phrases) in Certain.Where(c => rules.FindCategory(c.Category) is not null))
            _book.Add(new KindMeant(category, Sureness.Yes), phrases.Split(',', StringSplitOptions.TrimEntries));
        foreach (var (category, phrases) in Likely.Where(c => rules.FindCategory(c.Category) is not null))
            _book.Add(new KindMeant(category, Sureness.Likely), phrases.Split(',', StringSplitOptions.TrimEntries));
    }

    /// <summary>What a text names; where it names several kinds that is not sure. Null where it names none.</summary>
    public KindMeant? Find(string text)
    {
        var stems = PlainWords.Stems(text);
        // A lanyard with a karabiner is a lanyard, and a bridge for a harness is a bridge.
        var besides = stems.ToList().FindIndex(w => Prepositions.Contains(w));
        return besides > 0 && In([.. stems.Take(besides)]) is { Sure: Sureness.Yes } head ? head : In(stems);
    }

    private KindMeant? In(IReadOnlyList<string> stems)
    {
        var found = _book.In(stems);
        if (found.Count == 0)
            return stems.Select(Compound).FirstOrDefault(k => k is not null);
        // The longer a phrase, the closer it names the thing: "rope bridge" is no rope.
        var best = found.MaxBy(f => (f.Length, f.Meaning.Sure));
        var isOne = found.All(f => string.Equals(f.Meaning.Category, best.Meaning.Category, StringComparison.Ordinal));
        return best.Meaning with
        {
            Sure = isOne ? best.Meaning.Sure : Sureness.Likely,
            Phrase = string.Join(' ', isOne ? stems.Skip(best.At).Take(best.Length) : stems.Where(w => !w.Any(char.IsDigit))),
        };
    }

    private static readonly HashSet<string> Prepositions = new(
        ["with", "w", "for", "incl", "including", "mit", "fur", "fuer", "inkl", "avec", "pour"],
        StringComparer.Ordinal
    );

    /// <summary>German puts words together: the last one names the thing.</summary>
    private static KindMeant? Compound(string word) =>
        Array.Find(LastWords, w => word.Length > w.Word.Length + 1 && word.EndsWith(w.Word, StringComparison.Ordinal))
            is { Category: { } category }
            ? new KindMeant(category, Sureness.Likely) { Phrase = word }
            : null;

    private static readonly (string Word, string? Category)[] LastWords =
    [
        ("gurt", "harness"),
        ("helm", "helmet"),
        ("karabiner", "connector"),
        ("schling", "sling"),
        ("schlinge", "sling"),
        ("bruck", "rope-bridge"),
        ("rolle", "pulley"),
        ("wirbel", "swivel-ring"),
        ("seil", "climbing-rope"),
        ("block", "rigging-block"),
        ("poller", "lowering-device"),
    ];

    private static readonly (string Category, string Phrases)[] Certain =
    [
        (
            "harness",
            "harness, climbing harness, tree harness, tree climbing harness, sit harness, full body harness, work positioning harness, "
                + "fall arrest harness, saddle, gurt, gurte, klettergurt, klettergurte, sitzgurt, auffanggurt, haltegurt, baumklettergurt, baumpflegegurt, "
                + "komplettgurt, harnais, baudrier, cuissard, harnais antichute, harnais d'élagage"
        ),
        (
            "rope-bridge",
            "rope bridge, bridge, harness bridge, replacement bridge, spare bridge, brücke, seilbrücke, textilbrücke, brückenseil, "
                + "gurtbrücke, ersatzbrücke, stegseil, pont, pont de corde, pontet, pont de harnais, corde de pont"
        ),
        (
            "climbing-rope",
            "climbing rope, climbing line, access rope, access line, static rope, semi static rope, kletterseil, kletterseile, zugangsseil, "
                + "statikseil, halbstatikseil, corde d'accès, corde de grimpe, corde d'élagage, corde semi statique, corde statique"
        ),
        (
            "lanyard",
            "lanyard, flipline, flip line, flip rope, positioning lanyard, work positioning lanyard, wire core lanyard, halteseil, "
                + "halteseile, verbindungsmittel, positionierungsseil, kurzsicherung, longe, longe de maintien, longe armée"
        ),
        (
            "connector",
            "connector, karabiner, carabiner, krab, crab, hms, karabinerhaken, quick link, screw link, maillon, snap hook, triple lock, "
                + "twist lock, screwgate, screw gate, schraubglied, verschlusskarabiner, mousqueton, connecteur"
        ),
        ("pulley", "pulley, micro pulley, hitch climber pulley, hitch pulley, seilrolle, seilrollen, rolle, rollen, poulie"),
        ("swivel-ring", "swivel, swivel ring, rope ring, wirbel, drehwirbel, émerillon"),
        (
            "rope-adjuster",
            "rope adjuster, mechanical adjuster, adjuster, lanyard adjuster, seilversteller, seilkürzer, längenverstellung, "
                + "einstellvorrichtung, ajusteur, ajusteur de longe, tendeur de longe"
        ),
        (
            "friction-cord",
            "friction cord, friction hitch, hitch cord, friction hitch cord, prusik, prussik, prusik cord, prusik loop, eye to eye, split tail, "
                + "klemmknotenschlinge, klemmknotenseil, prusikschlinge, klemmschnur, cordelette, cordelette autobloquante, prusik cousu"
        ),
        (
            "sling",
            "sling, strop, round sling, webbing sling, tape sling, loop runner, endless sling, schlinge, bandschlinge, rundschlinge, "
                + "hebeband, élingue, anneau de sangle, anneau cousu, sangle, estrope"
        ),
        (
            "anchor-cover",
            "anchor cover, cambium saver, cambium protector, friction saver, false crotch, kambiumschoner, rindenschoner, "
                + "protège cambium, fausse fourche"
        ),
        (
            "energy-absorber",
            "energy absorber, shock absorber, shock pack, fall absorber, falldämpfer, bandfalldämpfer, absorbeur, absorbeur d'énergie"
        ),
        ("helmet", "helmet, climbing helmet, hard hat, helm, helme, schutzhelm, kletterhelm, kopfschutz, casque, casque de protection"),
        (
            "rigging-rope",
            "rigging rope, rigging line, lowering rope, lowering line, bull rope, ablassseil, ablaßseil, riggingseil, corde de rétention, "
                + "corde de démontage, corde de rigging"
        ),
        (
            "rigging-block",
            "rigging block, arborist block, impact block, lowering block, riggingblock, ablassblock, umlenkblock, poulie de rétention, "
                + "poulie de démontage, bloc de rétention"
        ),
        (
            "lowering-device",
            "lowering device, bollard, rigging bollard, lowering bollard, friction drum, ablassgerät, abseilpoller, ablasspoller, poller, "
                + "bremstrommel, bollard de rétention, tambour de freinage, cabestan"
        ),
    ];

    /// <summary>Words that are used for several kinds.</summary>
    private static readonly (string Category, string Phrases)[] Likely =
    [
        ("climbing-rope", "rope, line, seil, seile, corde"),
        ("connector", "shackle, hook, schäkel, haken, manille, crochet"),
        ("swivel-ring", "ring, anneau"),
        ("rope-adjuster", "ascender, descender, rope grab, rope clamp, steigklemme, seilklemme, abseilgerät, bloqueur, descendeur"),
        ("friction-cord", "cord, hitch, reepschnur"),
        ("sling", "tape, band, loop"),
        ("rigging-block", "block, blöcke, bloc"),
        ("lanyard", "ceinture de maintien"),
    ];
}
