namespace ExamDocs.Intake.OwnList.Words;

/// <summary>The words for each category in English, German and French. Common practice, no source.</summary>
internal static class KindVocabulary
{
    /// <summary>What German words for kit end with.</summary>
    public static readonly (string Word, string? Category)[] LastWords =
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

    /// <summary>Words that mean one category and no other.</summary>
    public static readonly (string Category, string Phrases)[] Certain =
    [
        (
            "harness",
            "harness, climbing harness, tree harness, tree climbing harness, sit harness, full body harness, work positioning harness, "
                + "fall arrest harness, saddle, gurt, gurte, klettergurt, klettergurte, sitzgurt, auffanggurt, haltegurt, "
                + "baumklettergurt, baumpflegegurt, "
                + "komplettgurt, harnais, baudrier, cuissard, harnais antichute, harnais d'élagage"
        ),
        (
            "rope-bridge",
            "rope bridge, bridge, harness bridge, replacement bridge, spare bridge, brücke, seilbrücke, textilbrücke, brückenseil, "
                + "gurtbrücke, ersatzbrücke, stegseil, pont, pont de corde, pontet, pont de harnais, corde de pont"
        ),
        (
            "climbing-rope",
            "climbing rope, climbing line, access rope, access line, static rope, semi static rope, kletterseil, "
                + "kletterseile, zugangsseil, "
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
            "friction cord, friction hitch, hitch cord, friction hitch cord, prusik, prussik, prusik cord, prusik loop, "
                + "eye to eye, split tail, "
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
    public static readonly (string Category, string Phrases)[] Likely =
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
