// One item: who and what it is, its criteria, its diameters, and the examiner's conclusion.

const itemFields = ["description", "maker", "model", "partNumber", "serial", "ownersMark"];
const dayFields = ["manufactured", "purchased", "firstUsed", "obsoleteOn", "lastExamined"];
const limitFields = [
    "maxUseYears",
    "maxStorageYears",
    "maxAgeYears",
    "intervalMonths",
    "nominalDiameterMm",
    "diameterTolerancePercent",
];

function particularField(draft, path, options = {}) {
    const known = flattened(draft.key.startsWith("known-") ? data.record.items[draft.order] : {});
    const set = value => ((draft.particulars[path] = value), keep(draft));
    const value = draft.particulars[path] ?? known[path];
    if (options.choose) return selectField(options.label, options.choose, value, set);
    return (options.isNumber ? numberField : textField)(options.label ?? words[path], value, set, options);
}

function loadFields(draft) {
    const units = [...["kg", "t", "kN", "persons"].map(unit => [unit, unit]), ["not-marked", words.notMarked]];
    return [
        numberField(
            words.load,
            draft.particulars["safeWorkingLoad.value"] ?? knownLoad(draft, "value"),
            keepIn(draft, "safeWorkingLoad.value"),
        ),
        selectField(
            words.unit,
            units,
            draft.particulars["safeWorkingLoad.unit"] ?? knownLoad(draft, "unit"),
            keepIn(draft, "safeWorkingLoad.unit"),
        ),
        textField(
            words.loadBasis,
            draft.particulars["safeWorkingLoad.basis"] ?? knownLoad(draft, "basis"),
            keepIn(draft, "safeWorkingLoad.basis"),
        ),
    ];
}

const keepIn = (draft, path) => value => ((draft.particulars[path] = value), keep(draft));

function knownLoad(draft, member) {
    const load = draft.key.startsWith("known-") ? data.record.items[draft.order].safeWorkingLoad : null;
    if (member === "unit" && load?.notMarked) return "not-marked";
    return load?.[member] === undefined ? undefined : String(load[member]);
}

function particularFields(draft) {
    const others = kept.drafts
        .filter(other => other !== draft)
        .map(other => itemOf(other).id)
        .filter(id => id)
        .map(id => [id, id]);
    return [
        ...itemFields.map(path => particularField(draft, path)),
        ...dayFields.map(path => particularField(draft, path, { label: words[path], hint: words.partialDate })),
        particularField(draft, "purpose", { label: words.purpose, choose: data.purposes }),
        particularField(draft, "status", { label: words.status, choose: data.statuses }),
        particularField(draft, "fittedTo", { label: words.fittedTo, choose: others }),
        ...loadFields(draft),
    ];
}

/** Only for a model that the form knows no limits of: what is known is the register's. */
function limitsPart(draft) {
    const item = itemOf(draft);
    const known = limitsKnown(item);
    if (known.length > 0) return folded(words.limits, ...known.map(limitsLine));
    const set = path => value => ((draft.limits[path] = value), keep(draft));
    return folded(
        words.limits,
        el("p", { class: "hint" }, words.limitsHint),
        textField(words.sourceTitle, draft.limits["source.title"], set("source.title")),
        textField(words.sourceRevision, draft.limits["source.revision"], set("source.revision")),
        textField(words.sourcePage, draft.limits["source.page"], set("source.page")),
        ...limitFields.map(path => numberField(words[path], draft.limits[path], set(path))),
        choiceField(words.noLimit, [["yes", words.yes]], draft.limits.noLimit || null, value =>
            set("noLimit")(value ?? ""),
        ),
    );
}

function limitsLine(limits) {
    const source = [limits.source?.title, limits.source?.revision, limits.source?.page].filter(part => part).join(", ");
    const figures = limitFields
        .filter(path => limits[path] !== undefined)
        .map(path => `${words[path]}: ${limits[path]}`);
    if (limits.noLimit) figures.push(words.noLimit);
    return el(
        "p",
        {},
        [source, limits.partNumber && `${words.partNumber}: ${limits.partNumber}`, ...figures]
            .filter(part => part)
            .join("; "),
    );
}

function stationField(draft, stations, n) {
    const station = stations[n];
    const set = member => value => {
        station[member] = value;
        draft.stations = stations;
        keep(draft);
    };
    const mean = lastMean(itemOf(draft), station.position);
    return el(
        "fieldset",
        { class: "station" },
        el("legend", {}, say(words.station, n + 1)),
        mean === null ? null : el("p", { class: "last" }, say(words.lastMean, mean.toFixed(2))),
        numberField(words.position, station.position, set("position")),
        numberField(words.firstReading, station.first, set("first")),
        numberField(words.secondReading, station.second, set("second")),
    );
}

function diametersPart(draft) {
    const stations = stationsOf(draft);
    if (!categoryOf(itemOf(draft))?.measured && stations.length === 0) return null;
    const list = el("div", { class: "stations" }, ...stations.map((_, n) => stationField(draft, stations, n)));
    const add = button(
        words.addStation,
        () => {
            stations.push({ position: "", first: "", second: "" });
            list.append(stationField(draft, stations, stations.length - 1));
            list.lastElementChild.querySelector("input").focus();
        },
        "quiet",
    );
    return el("section", {}, el("h3", {}, words.diameters), el("p", { class: "hint" }, words.diametersHint), list, add);
}

function conclusionPart(draft) {
    const set = path => value => ((draft.examination[path] = value ?? ""), keep(draft), showProgress(draft));
    const text = path => textField(words[path], draft.examination[path], set(path));
    return el(
        "section",
        { class: "conclusion" },
        el("h3", {}, words.conclusion),
        choiceField(
            words.conclusionAsked,
            [
                ["fit", words.fit],
                ["withdraw", words.withdraw],
            ],
            draft.examination.conclusion || null,
            set("conclusion"),
            { about: [el("p", { class: "hint" }, words.conclusionHint)], kind: "answers" },
        ),
        folded(
            words.more,
            textField(words.nextBy, draft.examination.nextBy, set("nextBy"), { type: "date", hint: words.nextByHint }),
            selectField(words.ownRegime, data.regimes, draft.examination.regime, set("regime")),
            text("testDescription"),
            text("testResult"),
            ...["exposure.hardware", "exposure.ground", "exposure.use"].map(path =>
                textField(words[path.slice(9)], draft.examination[path], set(path)),
            ),
            numberField(words.userMassKg, draft.examination["exposure.userMassKg"], set("exposure.userMassKg")),
        ),
    );
}

function lastPart(item, last) {
    if (!last) return item.lastExamined ? el("p", {}, say(words.lastExaminedOn, item.lastExamined)) : null;
    const concluded =
        last.conclusion === "withdraw"
            ? words.withdrawnThen
            : last.conclusion === "fit"
              ? words.fitThen
              : words.noConclusionThen;
    const defects = (last.defects ?? []).map(defect => {
        const parts = [
            defect.criterion,
            defect.part,
            defect.description,
            defect.danger && words[defect.danger === "now" ? "dangerNow" : "dangerLater"],
            defect.becomesDangerOn,
            defect.remedy,
        ];
        return el("li", {}, parts.filter(part => part).join("; "));
    });
    return el(
        "div",
        { class: last.conclusion === "withdraw" ? "warning" : "known" },
        el("p", {}, say(words.lastExaminedOn, last.examinedOn ?? words.noDay), " ", concluded),
        ...(defects.length > 0 ? [el("p", {}, words.defectsThen), el("ul", {}, ...defects)] : []),
    );
}

function identityLine(item) {
    const parts = [
        [words.serial, item.serial],
        [words.ownersMark, item.ownersMark],
        [words.maker, item.maker],
        [words.model, item.model],
        [words.partNumber, item.partNumber],
        [words.manufactured, item.manufactured],
        [words.firstUsed, item.firstUsed],
        [words.fittedTo, item.fittedTo],
    [words.status, data.statuses.find(([status]) => status === item.status)?.[1]],
    ];
    return el(
        "dl",
        { class: "identity" },
        ...parts
            .filter(([, value]) => value)
            .map(([name, value]) => el("div", {}, el("dt", {}, name), el("dd", {}, value))),
    );
}

function showProgress(draft) {
    const line = document.getElementById("progress");
    if (line) line.textContent = say(words.answered, ...answeredOf(draft));
}

function addedPart(draft) {
    if (!draft.key.startsWith("added-")) return null;
    return el(
        "section",
        {},
        particularField(draft, "id", { label: words.id, hint: words.idHint }),
        el("div", { "data-field": "category" }, categoryField(draft)),
    );
}

const isAnswered = draft =>
    Object.values(draft.answers).some(answer => answer.state || answer.note || answer.photo || isFilled(answer.defect ?? {}));

/** With an answer, the category stays: the answers are to its criteria. */
function categoryField(draft) {
    if (isAnswered(draft)) return null;
    const known = data.categories.map(category => [category.id, category.name]);
    return selectField(words.category, known, draft.particulars.category, value => {
        // An answer may have been given since this field was drawn.
        if (!isAnswered(draft)) {
            Object.assign(draft, { answers: {}, particulars: { ...draft.particulars, category: value } });
            keep(draft);
        }
        show();
        (document.querySelector("[data-field=category] select") ?? document.querySelector("h1")).focus();
    });
}

function itemView(draft) {
    const [item, last] = [itemOf(draft), lastOf(itemOf(draft))];
    const criteria = categoryOf(item)?.criteria ?? [];
    const isAdded = draft.key.startsWith("added-");
    const particulars = folded(words.particulars, ...particularFields(draft));
    particulars.open = isAdded && !item.description;
    return [
        el(
            "h1",
            { tabindex: -1 },
            isAdded && !item.id ? words.newItem : item.id,
            item.category ? el("small", {}, categoryOf(item)?.name ?? item.category) : null,
        ),
        addedPart(draft),
        item.description ? el("p", {}, item.description) : null,
        identityLine(item),
        lastPart(item, last),
        particulars,
        limitsPart(draft),
        el("h2", {}, words.criteria),
        el("p", { id: "progress", role: "status" }, say(words.answered, ...answeredOf(draft))),
        ...criteria.map((criterion, n) => criterionCard(draft, criterion, last, n + 1, criteria.length)),
        diametersPart(draft),
        conclusionPart(draft),
        itemEnd(draft),
    ];
}

function itemEnd(draft) {
    const next = kept.drafts[kept.drafts.indexOf(draft) + 1];
    const go = next ? say(words.nextItem, itemOf(next).id ?? words.newItem) : words.toTheEnd;
    const to = next ? `#item/${next.key}` : "#save";
    return el(
        "div",
        { class: "row end" },
        button(say(words.saveAndGoOn, go), async () => (await saveFile(), (location.hash = to))),
        el("a", { class: "button quiet", href: to }, go),
    );
}
