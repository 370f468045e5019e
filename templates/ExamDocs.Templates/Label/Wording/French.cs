using ExamDocs.Templates.Shared.Wording;
using NodaTime;

namespace ExamDocs.Templates.Label.Wording;

/// <inheritdoc />
internal sealed class French : LabelPhrases
{
    public override string Eyelet => "œillet";
    public override IReadOnlyList<string> Signal { get; } = ["NE PAS", "UTILISER"];
    public override string NotDetermined => "NON DÉTERMINÉ";
    public override string SignLabel => "Signe d’interdiction\u00A0: ne pas utiliser";
    public override string HoldSignLabel => "Point d’interrogation dans un carré sur la pointe\u00A0: non déterminé";
    public override string Why => "Motif";
    public override string Since => "Depuis";
    public override string Release => "Levée";
    public override string WhyHold => "L’enregistrement n’est pas assez complet pour dire s’il peut être utilisé.";

    public override string ReleaseByPerson =>
        "Seulement par une personne compétente, par écrit. Tenir à l’écart\u00A0; laisser cette étiquette.";

    public override string ReleaseHold =>
        "Seulement quand une personne compétente l’a vérifié et l’a dit par écrit. Laisser cette étiquette.";

    public override string NeverRelease =>
        "NE JAMAIS REMETTRE EN SERVICE. Tenir à l’écart, puis détruire pour que nul ne puisse le réutiliser.";

    public override string Owner => "Firme";
    public override string ExaminedBy => "Vérifié par\u00A0:";
    public override string PageOne => "Page 1 sur 1";
    public override string Shortened => "… (abrégé\u00A0; l’enregistrement a le tout)";
    public override string Caution => "La notice du fabricant, la loi locale et le jugement de la personne compétente priment.";

    public override string Verify(string number) => $"Comparer {number} au registre de l’émetteur.";

    public override string More(int more) => $"et {Printed.Count(more)} de plus\u00A0: voir l’enregistrement.";

    public override string Title(string kind, string number) => $"{kind} {number}";

    public override string QuarantineTitle => "Étiquette de mise à l’écart";
    public override string HoldTitle => "Étiquette d’attente";

    public override string Regime(string law) => $"Vérifié selon\u00A0: {law}";

    public override string SinceDay(LocalDate? day) => Printed.Day(day);
}
