using System.Text.Json;

namespace ExamDocs.Proof.Tests.SecondEvaluator;

/// <summary>Errors of an item, of its examination, and of the people, limits and visit they rest on (U3).</summary>
internal static class Errors
{
    private static readonly HashSet<string> Regimes = ["gb-loler", "ni-loler", "gb-wah", "eu-en365", "de", "fr", "au-nz", "us"];

    private static readonly HashSet<string> Bases = ["six-month", "twelve-month", "scheme", "exceptional", "first-use", "installation"];

    public static bool OfVisit(JsonElement visit) =>
        Lacks(visit, "reference", "examinedOn", "reportedOn")
        || !IsParty(visit.Member("employer"))
        || !IsParty(visit.Member("premises"))
        || !IsWord(visit, "regime", Regimes);

    public static bool OfItem(Kit kit, JsonElement record)
    {
        var item = kit.Element;
        return Lacks(item, "id", "category", "description")
            || kit.Kind is null
            || !IsWord(item, "purpose", ["lifts-persons", "accessory", "other", "fall-arrest-only"])
            || !IsWord(item, "status", ["in-use", "stored", "not-presented", "lost", "destroyed"])
            || HasUnknownMember(item)
            || record.List("items").Count(other => other.Text("id") == kit.Id) > 1
            || (item.Text("fittedTo") is not null && kit.Whole is null)
            || HasImpossibleOrder(kit)
            || IsUsedAfterAll(kit);
    }

    /// <summary>Said never to be used, with a day of first use, or with what it was used for at some examination.</summary>
    private static bool IsUsedAfterAll(Kit kit) =>
        kit.Element.Yes("neverUsed")
        && (
            kit.Element.Dates("firstUsed") is not null
            || kit.Earlier.Select(e => e.Examination).Concat(kit.Examination is { } now ? [now] : []).Any(ShowsUse)
        );

    private static bool ShowsUse(JsonElement examination) =>
        examination.Member("exposure") is { } exposure
        && (
            exposure.Member("userMassKg") is not null
            || exposure.Text("use") is not (null or "none")
            || exposure.Text("ground") is not (null or "none")
        );

    public static bool OfExamination(Kit kit, JsonElement examination, JsonElement record) =>
        !IsWord(examination, "conclusion", ["fit", "withdraw"])
        || !IsWord(examination, "basis", Bases)
        || !IsWord(examination, "regime", Regimes)
        || Lacks(examination, "conclusion", "basis", "examiner")
        || HasUnknownMember(examination)
        || examination.List("observations").Count == 0
        || !(examination.Member("nextBy") is null || examination.Day("nextBy") is null || examination.Day("nextBy") > kit.On)
        || examination.List("defects").Any(IsPoorDefect)
        || examination.List("defects").Any(defect => SpeaksAgainstAnswer(defect, examination, kit.Kind))
        || HasPoorAnswer(examination.List("observations"), kit.Kind)
        || new[] { "examiner", "author", "authenticatedBy" }.Any(role => !IsGoodPerson(examination.Text(role), record));

    /// <summary>One of the examiner's words where the rules need it withdrawn.</summary>
    public static bool IsKinder(Kit kit) => kit.Withdrawn && kit.Examination?.Text("conclusion") == "fit";

    private static bool HasPoorAnswer(IReadOnlyList<JsonElement> answers, Kind? kind) =>
        answers.Any(answer => IsPoor(answer, kind))
        || answers.GroupBy(answer => answer.Text("criterion"), StringComparer.Ordinal).Any(group => group.Count() > 1);

    private static bool IsPoor(JsonElement answer, Kind? kind) =>
        kind is null
        || !kind.Criteria.TryGetValue(answer.Text("criterion") ?? "", out var criterion)
        || (answer.Text("state") is { } state && !FoundRules.Allows(criterion, state))
        || (answer.Text("state") is "noted" or "doubt" or "defect" && answer.Text("note") is null);

    private static bool IsPoorDefect(JsonElement defect) =>
        !IsWord(defect, "danger", ["now", "later"])
        || Lacks(defect, "danger", "description", "remedy")
        || (defect.Text("danger") == "later" && defect.Day("becomesDangerOn") is null);

    /// <summary>A danger now, or any defect of a decisive criterion, of what is answered neither defect nor doubt.</summary>
    private static bool SpeaksAgainstAnswer(JsonElement defect, JsonElement examination, Kind? kind)
    {
        if (defect.Text("criterion") is not { } named || kind is null)
        {
            return false;
        }

        if (!kind.Criteria.TryGetValue(named, out var criterion))
        {
            return true;
        }

        var putOff = defect.Text("danger") == "later" && !defect.Yes("imminentRisk") && criterion.Class != "decisive";
        return !putOff
            && !examination
                .List("observations")
                .Any(o =>
                    o.Text("criterion") == named
                    && o.Text("state") is not ("clear" or "noted" or "no-sign" or "not-examined" or "not-applicable")
                );
    }

    private static bool IsGoodPerson(string? id, JsonElement record)
    {
        if (id is null)
        {
            return true;
        }

        var people = record.List("people").Where(person => person.Text("id") == id).ToList();
        return people.Count == 1
            && !Lacks(people[0], "name", "address", "qualifications")
            && (people[0].Yes("selfEmployed") || (people[0].No("selfEmployed") && IsParty(people[0].Member("employer"))));
    }

    private static bool HasImpossibleOrder(Kit kit)
    {
        var (made, bought, used) = (kit.Element.Dates("manufactured"), kit.Element.Dates("purchased"), kit.Element.Dates("firstUsed"));
        return made?.First > used?.Last || made?.First > bought?.Last || made?.First > kit.On || used?.First > kit.On;
    }

    private static bool IsParty(JsonElement? party) => party is { } p && !Lacks(p, "name", "address");

    private static bool Lacks(JsonElement element, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (element.Text(name) is null)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsWord(JsonElement element, string name, IReadOnlySet<string> words) =>
        element.Text(name) is not { } word || words.Contains(word);

    private static bool IsWord(JsonElement element, string name, string[] words) =>
        element.Text(name) is not { } word || words.Contains(word);

    /// <summary>The record format uses no member with a capital at its start or a sign within.</summary>
    private static bool HasUnknownMember(JsonElement element) =>
        element.EnumerateObject().Any(member => !member.Name.All(char.IsAsciiLetter) || char.IsUpper(member.Name[0]));
}
