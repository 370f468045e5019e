// The visit: for whom, where, when, by whom; the list of items; and the people.

const visitFields = ["employer.name", "employer.address", "premises.name", "premises.address"];
const optionalVisitFields = [
    "hiredFrom.name",
    "hiredFrom.address",
    "enforcingAuthority.name",
    "enforcingAuthority.address",
];

/** "employer.name" is the phrase employerName. */
const visitLabel = path => words[path.replace(/\.(\w)/, (_, letter) => letter.toUpperCase())] ?? path;

const setVisit = path => value => ((kept.visit.members[path] = value ?? ""), keep());

const visitField = (path, options) => textField(visitLabel(path), kept.visit.members[path], setVisit(path), options);

function dayField(path) {
    const field = visitField(path, { type: "date" });
    const fault = el("p", { class: "fault", role: "status" });
    const judge = () => (fault.textContent = path === "examinedOn" ? dayFault() : "");
    field.querySelector("input").addEventListener("input", judge);
    judge();
    field.append(fault);
    return field;
}

/** An examination of the day before, or of the same day, would be taken for the later one. */
function dayFault() {
    const day = kept.visit.members.examinedOn;
    const latest =
        data.record.examinations
            .map(examination => examination.examinedOn ?? "")
            .sort()
            .at(-1) ?? "";
    return day && latest && day <= latest ? say(words.dayNotAfter, latest) : "";
}

function basisFields() {
    const part = el("div", {});
    const fill = () => {
        const { basis } = kept.visit.members;
        const asked =
            basis === "scheme"
                ? ["scheme.reference", "scheme.author", "scheme.months"]
                : basis === "exceptional"
                  ? ["event.what", "event.on"]
                  : [];
        part.replaceChildren(...asked.map(path => visitField(path, path === "event.on" ? { type: "date" } : {})));
    };
    const choice = selectField(
        words.basis,
        data.bases,
        kept.visit.members.basis,
        value => {
            setVisit("basis")(value);
            fill();
        },
    );
    fill();
    return [choice, part];
}

const everybody = () => [
    ...data.record.people.map(person => [person.id, person.name]),
    ...kept.visit.people.map(person => [person.id, person.name || person.id]),
];

function addPerson() {
    const taken = new Set(everybody().map(([id]) => id));
    let n = 1;
    while (taken.has(`ex${n}`)) n++;
    kept.visit.people.push({ id: `ex${n}` });
    keep();
    show();
    [...document.querySelectorAll(".person")].at(-1).querySelector("input").focus();
}

function personFields(person) {
    const set = path => value => {
        person[path] = value ?? "";
        const offered = document.querySelector(`option[value="${person.id}"]`);
        if (offered) offered.textContent = person.name || person.id;
        keep();
    };
    const field = path => textField(visitLabel(`person.${path}`), person[path], set(path));
    return el(
        "fieldset",
        { class: "person" },
        el("legend", {}, say(words.person, person.id)),
        ...["name", "address", "qualifications"].map(field),
        choiceField(
            words.selfEmployed,
            [
                ["yes", words.yes],
                ["no", words.no],
            ],
            person.selfEmployed || null,
            set("selfEmployed"),
        ),
        ...["employer.name", "employer.address"].map(path =>
            textField(
                words[path === "employer.name" ? "personsEmployer" : "personsEmployerAddress"],
                person[path],
                set(path),
            ),
        ),
    );
}

function visitView() {
    return [
        el("h1", { tabindex: -1 }, words.visit),
        el("p", { class: "hint" }, say(words.reference, kept.visit.reference)),
        selectField(words.regime, data.regimes, kept.visit.members.regime, setVisit("regime")),
        ...visitFields.map(path => visitField(path)),
        dayField("examinedOn"),
        dayField("reportedOn"),
        selectField(words.examiner, everybody(), kept.visit.members.examiner, setVisit("examiner")),
        ...kept.visit.people.map(personFields),
        button(words.addPerson, addPerson, "quiet"),
        ...basisFields(),
        folded(words.more, ...optionalVisitFields.map(path => visitField(path))),
        el("div", { class: "row end" }, el("a", { class: "button", href: "#items" }, words.toItems)),
    ];
}

function addItem() {
    const order = kept.drafts.length;
    const draft = emptyDraft(kept.visit.reference, `added-${order}`, order);
    kept.drafts.push(draft);
    keep(draft);
    location.hash = `#item/${draft.key}`;
}

function itemLine(draft) {
    const item = itemOf(draft);
    const missing = isExamined(draft) ? missingIn(draft) : [];
    const state = !isExamined(draft)
        ? words.notBegun
        : missing.length > 0
          ? say(words.answered, ...answeredOf(draft))
          : words.allRecorded;
    const about = [categoryOf(item)?.name ?? item.category, item.serial && `${words.serial} ${item.serial}`]
        .filter(part => part)
        .join(", ");
    return el(
        "li",
        {},
        el(
            "a",
            { href: `#item/${draft.key}` },
            el("b", {}, item.id || words.newItem),
            el("span", {}, about),
            lastOf(item)?.conclusion === "withdraw" ? el("span", { class: "was-withdrawn" }, words.withdrawnLast) : null,
            el("span", { class: "state" }, state),
        ),
    );
}

function itemsView() {
    const doubled = twice();
    return [
        el("h1", { tabindex: -1 }, words.items),
        kept.drafts.length === 0 ? el("p", {}, words.noItems) : null,
        el("ul", { class: "items" }, ...kept.drafts.map(itemLine)),
        doubled.length > 0 ? el("p", { class: "fault" }, say(words.twice, doubled.join(", "))) : null,
        el(
            "div",
            { class: "row end" },
            button(words.addItem, addItem, "quiet"),
            el("a", { class: "button", href: "#save" }, words.toTheEnd),
        ),
    ];
}
