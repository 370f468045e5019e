// The record that is saved: what the form was made with, and what was typed, in the format examdocs/1. The same answers give the
// same file, byte by byte.

/** The members of an object under paths such as employer.name; lists are left out. */
function flattened(object, before = "") {
    const members = {};
    for (const [name, value] of Object.entries(object ?? {})) {
        if (value !== null && typeof value === "object" && !Array.isArray(value))
            Object.assign(members, flattened(value, `${before}${name}.`));
        else if (!Array.isArray(value)) members[before + name] = String(value);
    }
    return members;
}

function put(object, path, value) {
    const names = path.split(".");
    const last = names.pop();
    let part = object;
    for (const name of names) part = part[name] ??= {};
    if (value === undefined || value === null || value === "") delete part[last];
    else part[last] = value;
}

const numberPaths = new Set([
    "safeWorkingLoad.value",
    "maxUseYears",
    "maxStorageYears",
    "maxAgeYears",
    "intervalMonths",
    "nominalDiameterMm",
    "diameterTolerancePercent",
    "exposure.userMassKg",
    "scheme.months",
    "cleanings",
]);

const flagPaths = new Set(["selfEmployed", "imminentRisk", "noLimit"]);

/** A number where the text is one; else the text itself, which the program refuses with its place. Nothing typed is lost. */
const numberOrText = text => (isNumber(text) ? Number(text.trim().replace(",", ".")) : text.trim());

function asTyped(path, text) {
    if (typeof text !== "string" || text.trim() === "") return undefined;
    if (flagPaths.has(path)) return text === "yes";
    return numberPaths.has(path) ? numberOrText(text) : text.trim();
}

function filled(object, members) {
    for (const [path, text] of Object.entries(members)) put(object, path, asTyped(path, text));
    return object;
}

const isFilled = members => Object.values(members).some(text => typeof text === "string" && text.trim() !== "");

function visitOf(visit) {
    const { examiner, basis, ...members } = Object.fromEntries(
        Object.entries(visit.members).filter(([path]) => !path.startsWith("scheme.") && !path.startsWith("event.")),
    );
    return { ...filled({}, members), reference: visit.reference };
}

function itemOf(draft) {
    const known = draft.key.startsWith("known-") ? structuredClone(data.record.items[draft.order]) : {};
    const item = filled(known, draft.particulars);
    if (item.safeWorkingLoad?.unit === "not-marked") {
        const { basis } = item.safeWorkingLoad;
        item.safeWorkingLoad = basis ? { notMarked: true, basis } : { notMarked: true };
    } else if (item.safeWorkingLoad?.notMarked && item.safeWorkingLoad.unit) delete item.safeWorkingLoad.notMarked;
    return item;
}

function observationsOf(draft) {
    return Object.entries(draft.answers)
        .filter(([, answer]) => answer.state || answer.note?.trim() || answer.photo)
        .map(([criterion, answer]) => ({
            criterion,
            ...(answer.state && { state: answer.state }),
            ...(answer.note?.trim() && { note: answer.note.trim() }),
            ...(answer.photo && { photo: answer.photo }),
        }));
}

/** Only for an answer that is a defect now: what was written before another answer was chosen is kept, and not sent. */
function defectsOf(draft) {
    return Object.entries(draft.answers)
        .filter(([, answer]) => answer.state === "defect" && isFilled(answer.defect ?? {}))
        .map(([criterion, answer]) => filled({ criterion }, answer.defect));
}

const readingsOf = station => [station.first, station.second].filter(text => text?.trim());

/** A station with a reading: its position alone may come from last time. */
function diametersOf(draft) {
    return stationsOf(draft)
        .filter(station => readingsOf(station).length > 0)
        .map(station => ({
            ...(station.position?.trim() && { positionMm: numberOrText(station.position) }),
            readingsMm: readingsOf(station).map(numberOrText),
        }));
}

const isExamined = draft =>
    observationsOf(draft).length > 0 || diametersOf(draft).length > 0 || isFilled(draft.examination);

/** Added by mistake, and left empty: it is not in the file. */
const isEmpty = draft =>
  draft.key.startsWith("added-") && !isFilled(draft.particulars) && !isFilled(draft.limits) && !isExamined(draft);

const draftsRecorded = () => kept.drafts.filter(draft => !isEmpty(draft));

function basisOf(visit) {
    const { examiner, basis } = visit.members;
    const more = prefix =>
        Object.fromEntries(Object.entries(visit.members).filter(([path]) => path.startsWith(prefix)));
    return filled(
        {},
        {
            examiner,
            basis,
            ...(basis === "scheme" ? more("scheme.") : {}),
            ...(basis === "exceptional" ? more("event.") : {}),
        },
    );
}

function examinationOf(draft) {
    const { conclusion, testDescription, testResult, ...members } = draft.examination;
    const [diameters, defects] = [diametersOf(draft), defectsOf(draft)];
    return {
        item: itemOf(draft).id ?? "",
        ...basisOf(kept.visit),
        ...filled({}, members),
        observations: observationsOf(draft),
        ...(diameters.length > 0 && { diameters }),
        ...((testDescription || testResult) && {
            tests: [filled({}, { description: testDescription, result: testResult })],
        }),
        ...(defects.length > 0 && { defects }),
        ...(conclusion && { conclusion }),
    };
}

function limitsOf(draft) {
    const { maker, model } = itemOf(draft);
    return filled({ ...(maker && { maker }), ...(model && { model }) }, draft.limits);
}

function recordOf() {
    const { record } = data;
    return {
        ...record,
        visit: visitOf(kept.visit),
        people: [...record.people, ...kept.visit.people.filter(({ id, ...typed }) => isFilled(typed)).map(person => filled({}, person))],
        items: draftsRecorded().map(itemOf),
        limits: [...record.limits, ...kept.drafts.filter(draft => isFilled(draft.limits)).map(limitsOf)],
        examinations: [...record.examinations, ...kept.drafts.filter(isExamined).map(examinationOf)],
    };
}

const fileText = () => JSON.stringify(recordOf(), null, 2) + "\n";
