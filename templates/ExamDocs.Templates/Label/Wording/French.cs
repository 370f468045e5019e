using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <inheritdoc />
internal sealed class French : LabelPhrases
{
    public override string Eyelet => "œillet";
    public override IReadOnlyList<string> Signal { get; } = ["NE PAS", "UTILISER"];
    public override double NameColumnEms => 3.9;
    public override string NotDetermined => "EN ATTENTE DE DÉCISION";
    public override string SignLabel => "Signe d’interdiction\u00A0: ne pas utiliser";
    public override string HoldSignLabel => "Point d’interrogation dans un carré sur la pointe\u00A0: en attente de décision";
    public override string Why => "Motif";
    public override string Since => "Depuis";
    public override string Release => "Levée";
    public override string WhyHold => "Enregistrement incomplet\u00A0: on ne peut dire s’il est utilisable.";

    public override string ReleaseByPerson(string? regime) =>
        $"Seulement par une {Able(regime)}, par écrit. Tenir à l’écart\u00A0; laisser l’étiquette.";

    public override string ReleaseHold(string? regime) =>
        $"Seulement par écrit, après vérification par une {Able(regime)}. Laisser l’étiquette.";

    public override string NeverRelease =>
        "NE JAMAIS REMETTRE EN SERVICE. Tenir à l’écart, puis détruire pour que nul ne puisse le réutiliser.";

    public override string KeptBy => "Tenu par";
    public override string Ring => "Appeler";
    public override string Ask => "Contact";

    public override string Says(bool isHold, string day) =>
        isHold ? $"NE PAS UTILISER. En attente de décision, {day}." : $"NE PAS UTILISER. Retiré du service, {day}.";

    public override string ExaminedBy => "Vérifié par\u00A0:";
    public override string PageOne => "Page 1 sur 1";
    public override string Shortened => "… (abrégé\u00A0; l’enregistrement a le tout)";

    public override string Caution(string? regime) =>
        $"Notice du fabricant, droit applicable sur place et jugement de la {Able(regime)} priment.";

    public override string Verify(string number) => $"Comparer {number} au registre de l’émetteur.";

    public override string More(int more) => $"et {Printed.Count(more)} de plus\u00A0: voir l’enregistrement.";

    public override string Title(string kind, string number) => $"{kind} {number}";

    public override string HandTagTitle => "Étiquette d’interdiction à remplir à la main";
    public override IReadOnlyList<string> HandTagLines { get; } = ["Équipement", "N° de série", "Motif", "Depuis", "Par"];

    public override string HandTagNote =>
        "Remplie à la main\u00A0: ce n’est pas un document émis, d’où l’absence de numéro. "
        + "Inscrire l’équipement dans l’enregistrement de la prochaine visite.";

    public override string QuarantineTitle => "Étiquette de mise à l’écart";
    public override string HoldTitle => "Étiquette d’attente";

    public override string Regime(string law) => $"Vérifié selon\u00A0: {law}";

    public override string TakenOutBy(string notice) => $"Non vérifié. Par l’avis {notice} du fabricant, mis à l’écart par\u00A0:";

    public override string Law(string law) => $"Droit\u00A0: {law}";

    public override string SinceDay(LocalDate? day) => Printed.Day(day);

    // The name in articles R4323-24 and R4323-100 of the Code du travail (from memory), which is that of no other law.
    private static string Able(string? regime) => regime is "fr" ? "personne qualifiée" : "personne compétente";
}
