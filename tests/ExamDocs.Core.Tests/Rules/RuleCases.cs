using ExamDocs.Core.Criteria;
using ExamDocs.Core.Regimes;
using static ExamDocs.Core.Tests.Rules.RuleCase;

namespace ExamDocs.Core.Tests.Rules;

/// <summary>For every code of the rule book, one slip for each branch of the rule; no other rule may find it.</summary>
internal static class RuleCases
{
    private const string Limits =
        """{ "maker": "Fenwright", "model": "F1", "source": { "title": "F1 instructions", "revision": "2", "page": "9" }, "maxUseYears": 10 }""";

    private static readonly string Saw = Answer("connector", "severe-load");

    public static IReadOnlyList<RuleCase> All { get; } =
    [
        .. Particulars,
        .. OfPeopleAndLimits,
        .. OfExaminations,
        .. Identity,
        .. Conflicts,
        .. References,
        .. Dates,
        .. DatesOfDeeds,
        .. Measurement,
        .. Renewals,
        .. RemembersCases.All,
    ];

    private static Core.Regimes.Regime OwnLaw =>
        Core.Regimes.RegimeIndex.Find("eu-en365")! with
        {
            Id = "own-law",
            AddedFrom = "regimes/own-law.json",
            NotConfirmed = [],
            Intervals = [new() { Entries = [Core.Regimes.RegimeIndex.Find("eu-en365")!.Intervals[0].Entries[0] with { Months = 120 }] }],
        };

    private static RuleCase[] Particulars =>
        [
            Gone("PAR001", "/visit/employer/name"),
            Gone("PAR001", "/visit/employer/address"),
            new("PAR001", "the employer is missing", ["/visit/employer/name", "/visit/employer/address"], Without("/visit/employer")),
            Gone("PAR002", "/visit/premises/name"),
            Gone("PAR002", "/visit/premises/address"),
            Gone("PAR003", "/items/0/manufactured") with
            {
                Make = RuleCase.All(Without("/items/0/manufactured"), Without("/limits/0/maxAgeYears")),
            },
            Gone("PAR004", "/items/0/lastExamined"),
            Gone("PAR005", "/items/0/safeWorkingLoad/value"),
            Gone("PAR005", "/items/0/safeWorkingLoad/unit"),
            Wrong("PAR005", "/items/0/safeWorkingLoad/value", "0"),
            new("PAR005", "no load at all", ["/items/0/safeWorkingLoad/value"], Without("/items/0/safeWorkingLoad")),
            Leads("PAR005", "/items/0/safeWorkingLoad", """{ "notMarked": true }""", "/items/0/safeWorkingLoad/basis"),
            Leads(
                "PAR005",
                "/items/0/safeWorkingLoad",
                """{ "notMarked": true, "basis": "data sheet", "value": 1, "unit": "persons" }""",
                "/items/0/safeWorkingLoad/notMarked"
            ) with
            {
                Besides = "PAR006",
            },
            Wrong("PAR006", "/items/0/safeWorkingLoad", """{ "notMarked": true, "basis": "data sheet: 140 kg" }"""),
            Gone("PAR016", "/visit/reference"),
            Gone("PAR016", "/visit/reportedOn"),
            new(
                "PAR016",
                "the visit has no date examined",
                ["/visit/examinedOn"],
                RuleCase.All(
                    Without("/visit/examinedOn"),
                    OnEach("examinedOn", "\"2026-05-11\""),
                    Without("/examinations/4"),
                    Without("/releases/0"),
                    Without("/disposals/0")
                )
            )
            {
                Besides = "PAR004",
            },
            Gone("PAR017", "/items/3/category"),
            Gone("PAR017", "/items/0/description"),
            new("PAR017", "an item without an id", ["/items/4/id"], WithCopy("/items", 3, i =>
                {
                    i.AsObject().Remove("id");
                    i["serial"] = "K-2";
                })) { Besides = "IDN006" },
            Gone("PAR022", "/items/0/purpose"),
            Leads("PAR023", "/visit/hiredFrom", """{ "name": "Fenmarsh Hire" }""", "/visit/hiredFrom/address"),
            Leads("PAR023", "/visit/hiredFrom", """{ "address": "6 Alder Row" }""", "/visit/hiredFrom/name"),
            Wrong("PAR026", "/visit/regime", "\"gb-loller\""),
            Gone("PAR026", "/visit/regime"),
            Wrong("PAR027", "/examinations/3/regime", "\"gb-waf\""),
            Wrong("PAR028", "/items/3/category", "\"helmett\""),
            Wrong("PAR033", "/examinations/0/regime", "\"de\""),
            new(
                "PAR040",
                "a regime of the user's own gives ten years",
                ["/examinations/2/regime"],
                With("/examinations/2/regime", "\"own-law\"")
            )
            {
                Rules = KnownRules.BuiltIn.With(OwnLaw),
            },
        ];

    private static RuleCase[] OfPeopleAndLimits =>
        [
            new("PAR014", "a person without an id", ["/people/2/id"], WithCopy("/people", 0, p => p.AsObject().Remove("id"))),
            Gone("PAR014", "/people/0/name"),
            Gone("PAR014", "/people/0/address"),
            Gone("PAR014", "/people/0/qualifications"),
            Gone("PAR015", "/people/0/selfEmployed"),
            Gone("PAR015", "/people/1/employer/name"),
            Gone("PAR015", "/people/1/employer/address"),
            Wrong("PAR015", "/people/0/employer", """{ "name": "Sallowby Inspections", "address": "5 Alder Row" }"""),
            new(
                "PAR029",
                "limits without a maker",
                ["/limits/4/maker"],
                RuleCase.All(With("/limits/-", Limits), Without("/limits/4/maker"))
            ),
            new(
                "PAR029",
                "limits without a model",
                ["/limits/4/model"],
                RuleCase.All(With("/limits/-", Limits), Without("/limits/4/model"))
            ),
            Gone("PAR029", "/limits/0/source/title"),
            new("PAR029", "limits without a source", ["/limits/0/source/title"], Without("/limits/0/source")),
            new("PAR030", "limits without a revision", ["/limits/0/source"], Without("/limits/0/source/revision")),
            new("PAR030", "limits without a page", ["/limits/0/source"], Without("/limits/0/source/page")),
            Leads("PAR031", "/limits/0/unobtainable", """{ "useUntil": "2027-05-01" }""", "/limits/0/unobtainable/sought"),
            Leads("PAR031", "/limits/0/unobtainable", """{ "sought": "asked the maker twice" }""", "/limits/0/unobtainable/useUntil"),
        ];

    private static RuleCase[] OfExaminations =>
        [
            Gone("PAR007", "/examinations/0/basis"),
            Gone("PAR008", "/examinations/0/defects/0/part"),
            Gone("PAR008", "/examinations/0/defects/0/description"),
            new(
                "PAR009",
                "a defect does not say when it is a danger",
                ["/examinations/0/defects/0/danger"],
                RuleCase.All(Without("/examinations/0/defects/0/danger"), With("/examinations/0/conclusion", "\"withdraw\""))
            ),
            new(
                "PAR010",
                "a defect has no remedy",
                ["/examinations/0/defects/0/remedy"],
                RuleCase.All(Without("/examinations/0/defects/0/remedy"), With("/examinations/0/conclusion", "\"withdraw\""))
            ),
            new(
                "PAR011",
                "a later danger has no date",
                ["/examinations/0/defects/0/becomesDangerOn"],
                RuleCase.All(Without("/examinations/0/defects/0/becomesDangerOn"), With("/examinations/0/conclusion", "\"withdraw\""))
            ),
            Gone("PAR012", "/examinations/0/tests/0/description"),
            Gone("PAR012", "/examinations/0/tests/0/result"),
            new(
                "PAR013",
                "neither visit nor examination has a date",
                [.. Enumerable.Range(0, 4).Select(i => $"/examinations/{i}/examinedOn")],
                RuleCase.All(
                    Without("/visit/examinedOn"),
                    Without("/examinations/4"),
                    Without("/releases/0"),
                    Without("/disposals/0"),
                    With("/examinations/0/conclusion", "\"withdraw\""),
                    With("/items/2/lastExamined", "\"2025-11-20\"")
                )
            )
            {
                Besides = "PAR016",
            },
            Gone("PAR018", "/examinations/0/examiner"),
            Gone("PAR018", "/examinations/0/conclusion"),
            new("PAR018", "nothing was observed", ["/examinations/3/observations"], Without("/examinations/3/observations")),
            Gone("PAR018", "/examinations/4/item") with
            {
                Besides = "PAR004",
            },
            new(
                "PAR019",
                "a scheme without particulars",
                ["/examinations/0/scheme/reference", "/examinations/0/scheme/author", "/examinations/0/scheme/months"],
                With("/examinations/0/basis", "\"scheme\"")
            ),
            new(
                "PAR020",
                "an exceptional examination without its event",
                ["/examinations/0/event/what", "/examinations/0/event/on"],
                With("/examinations/0/basis", "\"exceptional\"")
            ),
            Leads("PAR021", "/examinations/2/observations/0/state", "\"noted\"", "/examinations/2/observations/0/note"),
            new(
                "PAR021",
                "a doubt without a note",
                ["/examinations/2/observations/1/note"],
                RuleCase.All(With("/examinations/2/observations/1/state", "\"doubt\""), With("/examinations/2/conclusion", "\"withdraw\""))
            ),
            new(
                "PAR021",
                "a defect without a note",
                ["/examinations/2/observations/1/note"],
                RuleCase.All(With("/examinations/2/observations/1/state", "\"defect\""), With("/examinations/2/conclusion", "\"withdraw\""))
            )
            {
                Besides = "PAR032",
            },
            new(
                "PAR032",
                "a defect that is not entered",
                ["/examinations/2/observations/1/state"],
                RuleCase.All(
                    With("/examinations/2/observations/1/state", "\"defect\""),
                    With("/examinations/2/observations/1/note", "\"cracked\""),
                    With("/examinations/2/conclusion", "\"withdraw\"")
                )
            ),
            new("PAR024", "an imminent risk and no authority", ["/examinations/0/defects/0/imminentRisk"], Imminent),
            new(
                "PAR024",
                "an imminent risk and an authority without an address",
                ["/examinations/0/defects/0/imminentRisk"],
                RuleCase.All(Imminent, With("/visit/enforcingAuthority", """{ "name": "The authority" }"""))
            ),
            Gone("PAR025", "/examinations/0/defects/0/notified"),
            new(
                "PAR025",
                "it is not recorded how the employer was told",
                ["/examinations/0/defects/0/notified"],
                Without("/examinations/0/defects/0/notified/how")
            ),
        ];

    private static RuleCase[] Identity =>
        [
            new("IDN001", "two items with one id", ["/items/3/id", "/items/4/id"], WithCopy("/items", 3, i => i["serial"] = "K-2")),
            new(
                "IDN002",
                "a shared serial",
                ["/items/3/serial", "/items/4/serial"],
                RuleCase.All(WithCopy("/items", 3, i => i["id"] = "HEL-2"), WithCopy("/examinations", 3, e => e["item"] = "HEL-2"))
            ),
            new(
                "IDN002",
                "a shared serial in other capitals",
                ["/items/3/serial", "/items/4/serial"],
                RuleCase.All(WithCopy("/items", 3, i =>
                    {
                        i["id"] = "HEL-2";
                        i["serial"] = "k-1";
                    }), WithCopy("/examinations", 3, e => e["item"] = "HEL-2"))
            ),
            Gone("IDN003", "/items/0/serial"),
            Gone("IDN004", "/items/2/serial"),
            new("IDN005", "two people with one id", ["/people/0/id", "/people/2/id"], WithCopy("/people", 0)),
            new("IDN006", "an item nobody examined", ["/items/3"], Without("/examinations/3")),
            Wrong("IDN007", "/items/0/serial", "\"A\u0410-1\""),
            Wrong("IDN007", "/items/0/ownersMark", "\"\u0410\u0412-1\""),
            Wrong("IDN007", "/items/0/serial", "\"HC-1\u0967\""),
            Wrong("IDN007", "/items/0/serial", "\"HC-1\u03611\""),
            Wrong("IDN007", "/items/0/serial", "\"HC-1\u28001\""),
            Wrong("IDN007", "/items/0/ownersMark", "\"\uA4DA\uA4F3\uA4E3-1\""),
            Wrong("IDN007", "/items/1/partNumber", "\"FB\u041538\"") with
            {
                Make = RuleCase.All(With("/items/1/partNumber", "\"FB\u041538\""), Without("/limits/1/partNumber")),
            },
            new(
                "IDN009",
                "a limit for storage alone",
                ["/items/3/model"],
                RuleCase.All(With("/limits/3/maxStorageYears", "5"), Without("/limits/3/maxAgeYears"))
            ),
            new("IDN008", "metal kit without a limit", ["/items/2/model"], Without("/limits/2/noLimit")),
        ];

    private static RuleCase[] Conflicts =>
        [
            new("CON022", "an earlier defect gone without a remedy", ["/items/0"], WithCopy("/examinations", 0, DefectGone)),
            new(
                "CON001",
                "a decisive defect and the conclusion fit",
                ["/examinations/2/conclusion"],
                RuleCase.All(
                    With("/examinations/2/observations/1/state", "\"defect\""),
                    With("/examinations/2/observations/1/note", "\"cracked\"")
                )
            )
            {
                Besides = "PAR032",
            },
            new("CON004", "a part on two items", ["/items/1/fittedTo"], WithCopy("/renewals", 0, r => r["item"] = "CON-1"))
            {
                Besides = "REN003",
            },
            Wrong("CON005", "/items/0/fittedTo", "\"HAR-1\""),
            new(
                "CON005",
                "two items fitted to each other",
                ["/items/0/fittedTo", "/items/1/fittedTo"],
                With("/items/0/fittedTo", "\"BRG-1\"")
            ),
            Wrong("CON006", "/examinations/0/basis", "\"twelve-month\""),
            new(
                "CON007",
                "a criterion answered twice",
                [$"/examinations/3/observations/{Required("helmet")}/criterion"],
                WithCopy("/examinations/3/observations", 0)
            ),
            new("CON008", "two examinations on one day", ["/examinations/5"], WithCopy("/examinations", 3)),
            new("CON009", "two sets of limits", ["/items/0/model"], With("/limits/-", Limits)),
            Wrong("CON030", "/items/1/partNumber", "\"FB-40\""),
            Gone("CON030", "/items/1/partNumber"),
            Wrong("CON010", "/limits/0/noLimit", "true"),
            Wrong("CON011", "/limits/0/model", "\"Long Reach\""),
            Leads("CON031", "/limits/0/model", "\"F2\"", "/items/0/model"),
            Leads("CON031", "/limits/0/maker", "\"Fenwrigth\"", "/items/0/model"),
            Gone("CON031", "/items/0/model"),
            Wrong("CON012", "/items/0/neverUsed", "true"),
            Wrong("CON032", "/items/0/neverUsed", "true") with
            {
                Make = RuleCase.All(NeverUsed, With("/items/0/status", "\"stored\""), With("/examinations/0/exposure", UsedDaily)),
            },
            Wrong("CON034", "/items/0/neverUsed", "true") with
            {
                Make = NeverUsed,
            },
            new("CON033", "a later defect of a criterion that is clear", ["/examinations/0/defects/0/criterion"], AbrasionIsClear),
            new(
                "CON033",
                "a later defect of a criterion without an answer",
                ["/examinations/0/defects/0/criterion"],
                Without($"/examinations/0/observations/{Answer("harness", "abrasion")}")
            ),
            new(
                "CON019",
                "a later defect of a decisive criterion that is clear",
                ["/examinations/0/defects/0/criterion"],
                RuleCase.All(AbrasionIsClear, With("/examinations/0/defects/0/criterion", "\"webbing-cut\""))
            ),
            new(
                "CON013",
                "a release after severe loading",
                ["/releases/0"],
                RuleCase.All(
                    With($"/examinations/4/observations/{Saw}/state", "\"defect\""),
                    With($"/examinations/4/observations/{Saw}/note", "\"held a fall\""),
                    With("/examinations/2/conclusion", "\"withdraw\"")
                )
            ),
            new("CON014", "a release without a name", ["/releases/0/by"], RuleCase.All(Withdrawn, Without("/releases/0/by"))),
            new("CON014", "a release without grounds", ["/releases/0/grounds"], RuleCase.All(Withdrawn, Without("/releases/0/grounds"))),
            new("CON014", "a release without a date", ["/releases/0/on"], RuleCase.All(Withdrawn, Without("/releases/0/on"))),
            new("CON014", "a release of nothing", ["/releases/0/item"], RuleCase.All(Withdrawn, Without("/releases/0/item"))),
            Wrong("CON015", "/examinations/3/observations/0/criterion", "\"identty\""),
            Gone("CON015", "/examinations/3/observations/0/criterion"),
            Gone("CON016", "/examinations/3/observations/0/state"),
            Wrong("CON016", "/examinations/3/observations/1/state", "\"not-applicable\""),
            Leads("CON017", "/visit/employer/name", "\"Jon Sallowby\"", "/examinations/3/examiner"),
            Leads("CON017", "/visit/hiredFrom", HiredFromTheExaminer, "/examinations/3/examiner"),
            Leads("CON018", "/items/0/status", "\"lost\"", "/examinations/0/conclusion"),
            Leads("CON018", "/items/0/status", "\"not-presented\"", "/examinations/0/conclusion"),
            Leads("CON018", "/disposals/0/on", "\"2026-05-11\"", "/examinations/2/conclusion"),
            new("CON001", "destroyed and concluded fit", ["/examinations/0/conclusion"], With("/items/0/status", "\"destroyed\"")),
            new("CON001", "a disposal says destroyed", ["/examinations/2/conclusion"], With("/disposals/0/action", "\"destroyed\"")),
            new(
                "CON040",
                "no document of that number withdrew it",
                ["/releases/0/document"],
                With("/releases/0/document", "\"Q-2020-000001\"")
            )
            {
                Besides = "CON001",
            },
            new(
                "CON040",
                "it was not withdrawn on that day",
                ["/releases/0/withdrawnOn"],
                With("/releases/0/withdrawnOn", "\"2020-01-02\"")
            )
            {
                Besides = "CON001",
            },
            new(
                "CON019",
                "a defect of a criterion that is clear",
                ["/examinations/0/defects/0/criterion"],
                RuleCase.All(
                    AbrasionIsClear,
                    With("/examinations/0/defects/0/danger", "\"now\""),
                    With("/examinations/0/conclusion", "\"withdraw\"")
                )
            ),
            new(
                "CON019",
                "a defect of a criterion that is not asked",
                ["/examinations/0/defects/0/criterion"],
                RuleCase.All(
                    With("/examinations/0/defects/0/criterion", "\"cover-cut\""),
                    With("/examinations/0/conclusion", "\"withdraw\"")
                )
            )
            {
                Besides = "PAR032",
            },
            new("CON020", "a helmet under the law on lifting", ["/examinations/3/regime"], Without("/examinations/3/regime")),
            Wrong("CON021", "/examinations/0/regime", "\"gb-wah\""),
            new(
                "CON021",
                "kit of no stated purpose under gb-wah",
                ["/examinations/2/regime"],
                RuleCase.All(With("/examinations/2/regime", "\"gb-wah\""), Without("/items/2/purpose"))
            )
            {
                Besides = "PAR022",
            },
        ];

    private const string HiredFromTheExaminer = """{ "name": "jon sallowby", "address": "4 Alder Row" }""";

    private static void DefectGone(System.Text.Json.Nodes.JsonNode e)
    {
        foreach (var o in e["observations"]!.AsArray())
            (o!["state"], o["note"]) = ("clear", "");
        (e["examinedOn"], e["defects"]![0]!["criterion"]) = ("2025-11-12", "fit");
    }

    private const string UsedDaily = """{ "use": "daily" }""";

    private static Action<System.Text.Json.Nodes.JsonNode> AbrasionIsClear =>
        RuleCase.All(
            With($"/examinations/0/observations/{Answer("harness", "abrasion")}/state", "\"clear\""),
            With($"/examinations/0/observations/{Answer("harness", "abrasion")}/note", "\"\"")
        );

    private static RuleCase[] References =>
        [
            Wrong("CON002", "/items/1/fittedTo", "\"HAR-9\"") with
            {
                Make = RuleCase.All(With("/items/1/fittedTo", "\"HAR-9\""), Without("/renewals/0")),
            },
            new(
                "CON002",
                "an examination of an unknown item",
                ["/examinations/5/item"],
                WithCopy("/examinations", 3, e => e["item"] = "XYZ-77")
            ),
            Wrong("CON002", "/renewals/0/item", "\"XYZ-77\"") with
            {
                Besides = "REN003",
            },
            Wrong("CON002", "/renewals/0/removedPart", "\"XYZ-77\""),
            Wrong("CON002", "/renewals/0/fittedPart", "\"XYZ-77\""),
            Wrong("CON002", "/remedies/0/item", "\"XYZ-77\""),
            Wrong("CON002", "/disposals/0/item", "\"XYZ-77\""),
            new("CON002", "a release of an unknown item", ["/releases/1/item"], WithCopy("/releases", 0, r => r["item"] = "XYZ-77")),
            Wrong("CON003", "/examinations/0/examiner", "\"ex9\""),
            Leads("CON041", "/visit/examiner", "\"ex1\"", "/examinations/3/examiner"),
            Leads("CON041", "/visit/basis", "\"exceptional\"", [.. Enumerable.Range(0, 4).Select(n => $"/examinations/{n}/basis")]),
            Wrong("CON003", "/examinations/0/author", "\"ex9\""),
            Wrong("CON003", "/examinations/0/authenticatedBy", "\"ex9\""),
            Wrong("CON003", "/renewals/0/doneBy", "\"ex9\""),
            Wrong("CON003", "/renewals/0/supervisedBy", "\"ex9\""),
            new("CON003", "a release by somebody unknown", ["/releases/1/by"], WithCopy("/releases", 0, r => r["by"] = "ex9")),
        ];

    private static RuleCase[] Dates =>
        [
            Wrong("DAT001", "/items/0/purchased", "\"2024-01-31\""),
            Wrong("DAT001", "/items/0/purchased", "\"2023\""),
            Leads("DAT002", "/items/0/purchased", "\"2024-05-21\"", "/items/0/firstUsed"),
            new(
                "DAT003",
                "first used before it was made",
                ["/items/0/firstUsed"],
                RuleCase.All(Without("/items/0/purchased"), Without("/items/0/declaration"), With("/items/0/firstUsed", "\"2024-01\""))
            ),
            new(
                "DAT004",
                "first used after the day examined",
                ["/items/0/firstUsed"],
                RuleCase.All(Without("/items/0/declaration"), With("/items/0/firstUsed", "\"2026-05-12\""))
            ),
            new(
                "DAT005",
                "made after the day examined",
                ["/items/2/manufactured"],
                RuleCase.All(
                    Without("/items/2/firstUsed"),
                    Without("/examinations/4"),
                    Without("/releases/0"),
                    Without("/disposals/0"),
                    With("/items/2/manufactured", "\"2026-05-12\"")
                )
            )
            {
                Besides = "PAR004",
            },
            new(
                "DAT006",
                "made after it was last examined",
                ["/items/0/lastExamined"],
                RuleCase.All(Without("/items/0/firstUsed"), Without("/items/0/purchased"), With("/items/0/manufactured", "\"2025-12\""))
            ),
            new(
                "DAT007",
                "obsolete before it was made",
                ["/items/0/obsoleteOn"],
                RuleCase.All(With("/items/0/obsoleteOn", "\"2024-01\""), With("/examinations/0/conclusion", "\"withdraw\""))
            ),
            Wrong("DAT008", "/items/0/lastExamined", "\"2026-05-11\""),
            Wrong("DAT008", "/items/0/lastExamined", "\"2026-06\""),
            Wrong("DAT009", "/visit/reportedOn", "\"2026-05-10\""),
            Leads("DAT009", "/examinations/3/examinedOn", "\"2026-05-13\"", "/visit/reportedOn"),
            Leads("DAT011", "/items/0/lastExamined", "\"2025-11-10\"", "/examinations/0"),
            Wrong("DAT012", "/examinations/0/nextBy", "\"2026-05-11\""),
            Wrong("DAT013", "/examinations/0/nextBy", "\"2026-11-12\""),
            Wrong("DAT020", "/examinations/0/defects/0/becomesDangerOn", "\"2028-05-12\""),
            Wrong("DAT020", "/examinations/0/defects/0/becomesDangerOn", "\"2190-09-01\""),
            Leads("DAT014", "/examinations/0/event", """{ "what": "a fall", "on": "2026-05-12" }""", "/examinations/0/event/on"),
            Leads("DAT016", "/items/0/declaration/on", "\"2023-05-19\"", "/items/0/firstUsed"),
            Leads("DAT016", "/items/0/declaration/on", "\"2024-05-21\"", "/items/0/firstUsed"),
        ];

    private static RuleCase[] DatesOfDeeds =>
        [
            Wrong("DAT010", "/visit/reportedOn", "\"2026-06-02\""),
            Wrong("DAT010", "/examinations/3/examinedOn", "\"2026-06-02\"") with
            {
                Make = RuleCase.All(With("/examinations/3/examinedOn", "\"2026-06-02\""), With("/items/3/lastExamined", "\"2026-01-12\"")),
                Besides = "DAT009",
            },
            Wrong("DAT010", "/remedies/0/doneOn", "\"2026-06-02\""),
            Wrong("DAT010", "/disposals/0/on", "\"2026-06-02\"") with
            {
                Besides = "CON018",
            },
            Wrong("DAT010", "/renewals/0/doneOn", "\"2026-06-02\"") with
            {
                Besides = "REN002",
            },
            Wrong("DAT010", "/items/0/declaration/on", "\"2026-06-02\"") with
            {
                Besides = "DAT016",
            },
            Wrong("DAT010", "/examinations/0/defects/0/notified/on", "\"2026-06-02\""),
            Wrong("DAT010", "/items/3/purchased", "\"2026-06-02\"") with
            {
                Besides = "DAT002",
            },
            new(
                "DAT010",
                "an item nobody examined, made in the future",
                ["/items/3/manufactured"],
                RuleCase.All(
                    Without("/examinations/3"),
                    Without("/items/3/firstUsed"),
                    Without("/items/3/lastExamined"),
                    With("/items/3/manufactured", "\"2027\"")
                )
            )
            {
                Besides = "IDN006",
            },
            new("DAT015", "a release in the future", ["/releases/0/on"], With("/releases/0/on", "\"2026-06-02\"")) { Besides = "CON001" },
        ];

    private static RuleCase[] Measurement =>
        [
            Leads("MEA001", "/examinations/1/diameters/0/readingsMm", "[]", "/examinations/1/diameters/0"),
            new(
                "MEA001",
                "a station without a position",
                ["/examinations/1/diameters/0"],
                Without("/examinations/1/diameters/0/positionMm")
            ),
            Leads("MEA002", "/examinations/1/diameters/1/positionMm", "50.0", "/examinations/1/diameters/1"),
            Leads("MEA003", "/examinations/1/diameters/0/readingsMm", "[11.0]", "/examinations/1/diameters/0"),
            new("MEA004", "no tolerance", ["/examinations/1/diameters"], Without("/limits/1/diameterTolerancePercent")),
            new("MEA004", "no nominal diameter", ["/examinations/1/diameters"], Without("/limits/1/nominalDiameterMm")),
            Leads(
                "MEA005",
                "/examinations/1/diameters",
                Profile((50, "11.9, 11.9"), (190, "12.1, 12.1"), (250, "11.9, 11.9")),
                "/examinations/1/diameters/1"
            ),
            Leads(
                "MEA006",
                "/examinations/1/diameters",
                Profile((50, "11.0, 11.0"), (120, "11.0, 11.0"), (190, "10.4, 10.4"), (250, "11.0, 11.0")),
                "/examinations/1/diameters/2"
            ),
            Leads(
                "MEA006",
                "/examinations/1/diameters",
                Profile((50, "11.0, 11.0"), (120, "10.8, 10.8"), (190, "10.8, 10.8"), (250, "11.0, 11.0"), (300, "11.0, 11.0")),
                "/examinations/1/diameters"
            ),
            new(
                "MEA007",
                "it has thinned from examination to examination",
                ["/examinations/1/diameters"],
                RuleCase.All(
                    With("/items/1/firstUsed", "\"2025-03-10\""),
                    With("/renewals/0/doneOn", "\"2025-03-09\""),
                    With("/examinations/1/diameters", Profile((50, "10.4, 10.4"))),
                    Thinner("2025-05-12", "10.7"),
                    Thinner("2025-08-12", "10.6"),
                    Thinner("2025-11-12", "10.5")
                )
            ),
            new(
                "MEA008",
                "another place was measured before",
                ["/examinations/1/diameters"],
                RuleCase.All(With("/examinations/1/diameters", Profile((60, "11.0, 11.0"))), Thinner("2025-11-12", "11.0"))
            ),
        ];

    private static RuleCase[] Renewals =>
        [
            Gone("REN001", "/renewals/0/item"),
            Gone("REN001", "/renewals/0/doneBy"),
            Gone("REN001", "/renewals/0/doneOn"),
            new("REN001", "neither part is named", ["/renewals/0"], Without("/renewals/0/fittedPart")),
            new("REN001", "the same part off and on", ["/renewals/0/fittedPart"], With("/renewals/0/removedPart", "\"BRG-1\"")),
            Wrong("REN002", "/renewals/0/doneOn", "\"2026-05-12\""),
            new("REN003", "the part fitted names another item", ["/renewals/0/fittedPart"], Without("/items/1/fittedTo")),
            Gone("REN004", "/renewals/0/supervisedBy"),
            new(
                "REN005",
                "a part taken off earlier and said to be still on",
                ["/items/2/fittedTo", "/items/2/fittedTo"],
                RuleCase.All(
                    With("/items/2/fittedTo", "\"HAR-1\""),
                    WithCopy("/renewals", 0, r => (r["removedPart"], r["fittedPart"], r["doneOn"]) = ("CON-1", null, "2026-01-10"))
                )
            ),
            new(
                "REN006",
                "a part taken off that nobody has seen since",
                ["/renewals/0/removedPart"],
                RuleCase.All(OldBridge, With("/renewals/0/removedPart", "\"OLD-1\""))
            )
            {
                Besides = "IDN006",
            },
            Leads("REN007", "/limits/0/permittedParts", """[ "FB-40", "FB-42" ]""", "/renewals/0/fittedPart") with
            {
                Besides = "CON001",
            },
            Leads("REN008", "/items/1/obsoleteOn", "\"2025-11-11\"", "/renewals/0/fittedPart") with
            {
                Besides = "CON001",
            },
            new(
                "REN008",
                "fitted after its storage had ended",
                ["/renewals/0/fittedPart"],
                RuleCase.All(
                    Without("/items/1/firstUsed"),
                    Without("/items/1/purchased"),
                    With("/items/1/manufactured", "\"2024-11-11\""),
                    With("/limits/1/maxStorageYears", "1")
                )
            ),
            new(
                "REN008",
                "first used after its storage had ended",
                ["/renewals/0/fittedPart"],
                RuleCase.All(With("/items/1/manufactured", "\"2024-11-11\""), With("/limits/1/maxStorageYears", "1"))
            )
            {
                Besides = "CON001",
            },
            new(
                "REN009",
                "a part withdrawn before it was fitted, and released after",
                ["/renewals/0/fittedPart"],
                RuleCase.All(
                    EarlierOfBridge("2025-11-12"),
                    With("/releases/-", """{ "item": "BRG-1", "by": "ex1", "on": "2025-11-13", "grounds": "knot dressed anew" }""")
                )
            ),
            new(
                "REN010",
                "a part fitted the day after it was examined",
                ["/renewals/0/doneOn"],
                RuleCase.All(
                    With("/renewals/0/doneOn", "\"2026-05-11\""),
                    With("/examinations/1/examinedOn", "\"2026-05-10\""),
                    With("/visit/examinedOn", "\"2026-05-10\""),
                    With("/examinations/0/examinedOn", "\"2026-05-11\""),
                    With("/releases/0/on", "\"2026-05-10\"")
                )
            ),
            new("REN011", "who may re-tie is not recorded", ["/renewals/0/retiedBy"], With("/renewals/0/retiedBy", "\"ex1\"")),
            new(
                "REN011",
                "the maker alone may re-tie",
                ["/renewals/0/retiedBy"],
                RuleCase.All(With("/renewals/0/retiedBy", "\"ex1\""), With("/limits/1/retying", "\"maker\""))
            ),
            new(
                "REN011",
                "re-tied by somebody not competent",
                ["/renewals/0/retiedBy"],
                RuleCase.All(
                    With(
                        "/people/-",
                        """{ "id": "cl1", "name": "Ove Tarnby", "address": "7 Alder Row, Fenmarsh", "qualifications": "climber", "selfEmployed": true }"""
                    ),
                    With("/renewals/0/retiedBy", "\"cl1\""),
                    With("/limits/1/retying", "\"competent-person\"")
                )
            ),
        ];

    private static Action<System.Text.Json.Nodes.JsonNode> OldBridge => WithCopy("/items", 1, i =>
        {
            i.AsObject().Remove("fittedTo");
            (i["id"], i["serial"]) = ("OLD-1", "B-0");
        });

    private static Action<System.Text.Json.Nodes.JsonNode> EarlierOfBridge(string on) => WithCopy("/examinations", 1, e =>
        {
            e.AsObject().Remove("diameters");
            (e["examinedOn"], e["conclusion"]) = (on, "withdraw");
        });

    private static string Profile(params (int Position, string Readings)[] stations) =>
        $"[{string.Join(", ", stations.Select(s => $$"""{ "positionMm": {{s.Position}}, "readingsMm": [{{s.Readings}}] }"""))}]";

    private static Action<System.Text.Json.Nodes.JsonNode> Thinner(string on, string reading) => WithCopy("/examinations", 1, e =>
        {
            e["examinedOn"] = on;
            e["diameters"] = System.Text.Json.Nodes.JsonNode.Parse(Profile((50, $"{reading}, {reading}")));
        });

    private static Action<System.Text.Json.Nodes.JsonNode> NeverUsed =>
        RuleCase.All(Without("/items/0/firstUsed"), With("/items/0/neverUsed", "true"));

    private static Action<System.Text.Json.Nodes.JsonNode> Withdrawn => With("/examinations/2/conclusion", "\"withdraw\"");

    private static Action<System.Text.Json.Nodes.JsonNode> Imminent =>
        RuleCase.All(With("/examinations/0/defects/0/imminentRisk", "true"), With("/examinations/0/conclusion", "\"withdraw\""));

    private static Action<System.Text.Json.Nodes.JsonNode> OnEach(string member, string json) =>
        RuleCase.All([.. Enumerable.Range(0, 4).Select(i => With($"/examinations/{i}/{member}", json))]);

    private static int Required(string category) => Catalogue.Find(category)!.Criteria.Count(c => c.Required);

    /// <summary>Index of a criterion's answer in the good record.</summary>
    private static string Answer(string category, string criterion) =>
        Catalogue
            .Find(category)!
            .Criteria.Where(c => c.Required)
            .Select(c => c.Id)
            .ToList()
            .IndexOf(criterion)
            .ToString(System.Globalization.CultureInfo.InvariantCulture);
}
