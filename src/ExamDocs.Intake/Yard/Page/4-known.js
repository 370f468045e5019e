// What is known of an item from before, and what is not recorded yet. Nothing here decides anything.

const categoryOf = item => data.categories.find(category => category.id === item.category);

/** The item's latest examination before; null where there is none. */
function lastOf(item) {
    const before = data.record.examinations.filter(examination => examination.item === item.id);
    return before.length === 0 ? null : before.reduce((a, b) => ((a.examinedOn ?? "") > (b.examinedOn ?? "") ? a : b));
}

const lastAnswer = (last, criterion) =>
    last?.observations?.find(observation => observation.criterion === criterion) ?? null;

/** The stations of a draft; where none was touched yet, the positions of last time without readings. */
function stationsOf(draft) {
    if (draft.stations !== null) return draft.stations;
    const last = lastOf(itemOf(draft));
    return (last?.diameters ?? []).map(station => ({
        position: String(station.positionMm ?? ""),
        first: "",
        second: "",
    }));
}

function lastMean(item, position) {
    const at = Number(position);
    const station = (lastOf(item)?.diameters ?? []).find(d => position !== "" && d.positionMm === at);
    const readings = (station?.readingsMm ?? []).filter(reading => typeof reading === "number");
    return readings.length === 0 ? null : readings.reduce((a, b) => a + b, 0) / readings.length;
}

const sameWord = (a, b) => (a ?? "").trim().toLowerCase() === (b ?? "").trim().toLowerCase();

const limitsKnown = item =>
    data.record.limits.filter(limits => sameWord(limits.maker, item.maker) && sameWord(limits.model, item.model));

const needsNote = state => ["noted", "doubt", "defect"].includes(state);

/** A defect is described whole, or not at all. */
function missingInDefect(answer, title) {
  if (answer?.state !== "defect" || !isFilled(answer.defect ?? {})) return [];
  const { danger } = answer.defect;
  const asked = [["part", "defectPart"], ["description", "defectDescription"], ["danger", "danger"], ["remedy", "defectRemedy"]];
  if (danger === "later") asked.push(["becomesDangerOn", "becomesDangerOn"]);
  const open = asked.filter(([path]) => !answer.defect[path]?.trim()).map(([, word]) => words[word]);
  return open.length === 0 ? [] : [say(words.defectMissing, title, open.join("; "))];
}

/** Sentences about what the program will miss in an item. */
function missingIn(draft) {
    const item = itemOf(draft);
    const missing = [];
    for (const path of ["id", "category"]) if (!item[path]) missing.push(say(words.missing, words[path]));
    const criteria = categoryOf(item)?.criteria ?? [];
    const open = criteria.filter(criterion => criterion.required && !draft.answers[criterion.id]?.state);
    if (open.length > 0)
        missing.push(say(words.unanswered, open.length, open.map(criterion => criterion.title).join(", ")));
    for (const { id, title } of criteria)
        if (needsNote(draft.answers[id]?.state) && !draft.answers[id].note?.trim())
            missing.push(say(words.noteMissing, title));
    for (const { id, title } of criteria) missing.push(...missingInDefect(draft.answers[id], title));
  if (!draft.examination.conclusion) missing.push(words.conclusionMissing);
    return missing;
}

function missingInVisit() {
    const asked = [
        "regime",
        "employer.name",
        "employer.address",
        "premises.name",
        "premises.address",
        "examiner",
        "basis",
        "examinedOn",
        "reportedOn",
    ];
    return asked.filter(path => !kept.visit.members[path]?.trim()).map(path => say(words.missing, visitLabel(path)));
}

/** Items whose id another one has as well. */
function twice() {
    const ids = kept.drafts.map(draft => itemOf(draft).id?.toUpperCase()).filter(id => id);
    return [...new Set(ids.filter((id, n) => ids.indexOf(id) !== n))];
}

const answeredOf = draft => {
    const criteria = categoryOf(itemOf(draft))?.criteria ?? [];
    return [criteria.filter(criterion => draft.answers[criterion.id]?.state).length, criteria.length];
};
