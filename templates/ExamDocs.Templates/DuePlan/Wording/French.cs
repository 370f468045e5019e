using System.Globalization;

namespace ExamDocs.Templates.DuePlan.Wording;

/// <inheritdoc />
internal sealed class French : DuePhrases
{
    public override string Title => "Ce qui arrive à échéance";
    public override string Lead => "Un plan tiré des décisions d’un registre. Ce n’est pas un rapport et il n’a pas de numéro.";
    public override string Whose => "Équipements de";
    public override string Everybody => "tous ceux du registre";
    public override string Period => "Échéances";
    public override string Counted => "Équipements";

    public override string DueAndApart(int due, int apart) => $"à vérifier : {N(due)} ; à ne pas utiliser : {N(apart)}";

    public override string DecidesNothing => "Cette page ne décide rien : elle dit ce que disent, à sa date, les décisions enregistrées.";

    public override string ApartHeading => "À ne pas utiliser";
    public override string ApartLead =>
        "Retiré, bloqué ou en retard à la date de cette page, quelles que soient les échéances. Aucune visite n’est proposée pour cela.";

    public override string TimelineHeading => "Mois par mois";
    public override string TimelineLead =>
        "Au-dessus de chaque ligne figure le nombre d’équipements à échéance dans le mois ; chaque trait est un jour. Un losange est le "
        + "dernier jour d’une visite proposée.";

    public override string NothingDue => "Rien n’arrive à échéance dans cette période.";
    public override string VisitRow => "visites proposées";

    public override string PlotTitle(string place) => $"Échéances par mois : {place}";

    public override string MonthsHeading => "Combien chaque mois";
    public override string Month => "Mois";
    public override string Employer => "Employeur";
    public override string Premises => "Lieu";
    public override string Category => "Catégorie";
    public override string Items => "Nombre";

    public override string VisitsHeading => "Visites proposées";
    public override string VisitsLead =>
        "Chacune à sa date ou avant. Un équipement peut passer plus tôt qu’il ne le doit, jamais plus tard. Les jours fériés et les "
        + "fins de semaine ne sont pas pris en compte.";

    public override string OnOrBefore => "Au plus tard le";
    public override string Where => "Où";
    public override string Time => "Durée";
    public override string Which => "Équipements";

    public override string HoursAndMinutes(int hours, int minutes) => $"{N(hours)} h {N(minutes)} min";

    public override string NoFigureFor(string categories) => $"sans indication : {categories}";

    public override string ListHeading => "Équipement par équipement";
    public override string FallsDue => "Échéance";
    public override string Item => "Équipement";
    public override string Serial => "Numéro de série";
    public override string NextBy => "Prochaine vérification avant le";
    public override string ToKnow => "À savoir";

    public override string TimeNotMeasured =>
        "Les durées sont les chiffres de l’utilisateur. Les enregistrements ne contiennent pas d’heures : la durée des visites passées "
        + "ne peut pas en être mesurée.";

    public override string LetterTitle => "Vérifications approfondies à échéance";

    public override string LetterLead(string from, string to, string asOf) =>
        $"Ces équipements doivent être vérifiés du {from} au {to} pour rester en service, d’après le registre au {asOf}. Merci de les "
        + "tenir prêts aux dates indiquées. Le jour même, ils peuvent encore être utilisés ; ensuite, plus.";

    public override string LetterRing => "S’il manque ici un équipement, ou s’il n’est plus à vous, merci de nous le dire.";

    private static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
}
