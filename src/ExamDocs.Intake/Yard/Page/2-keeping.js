// What was typed is kept in the browser's own database at every stroke, and read from there when the page is opened again.

const kept = { base: null, visit: null, drafts: [], failed: false, unkept: new Map() };

const baseName = () => `examdocs-${data.form}`;

function openBase() {
    return new Promise((resolve, reject) => {
        const asked = indexedDB.open(baseName(), 1);
        asked.onupgradeneeded = () => {
            asked.result.createObjectStore("visits", { keyPath: "reference" });
            asked.result.createObjectStore("drafts", { keyPath: ["reference", "key"] });
            asked.result.createObjectStore("photos", { keyPath: "name" });
        };
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
    });
}

function readAll(store) {
    return new Promise((resolve, reject) => {
        const asked = kept.base.transaction(store).objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
    });
}

/** Writes values in one transaction: all of them, or none. */
function write(values) {
    return new Promise((resolve, reject) => {
        const change = kept.base.transaction(
            values.map(([store]) => store),
            "readwrite",
            { durability: "strict" },
        );
        for (const [store, value] of values) change.objectStore(store).put(value);
        change.oncomplete = () => resolve();
        change.onabort = change.onerror = () => reject(change.error);
    });
}

/** Keeps the visit, and a draft where one changed. Called at every stroke. */
async function keep(draft) {
    kept.visit.changes += 1;
    await keepUncounted(draft);
}

async function keepUncounted(draft) {
    if (draft) kept.unkept.set(draft, kept.visit.changes);
    const drafts = [...kept.unkept];
    try {
        await writeOrReopen([["visits", kept.visit], ...drafts.map(([changed]) => ["drafts", changed])]);
        for (const [changed, at] of drafts) if (kept.unkept.get(changed) === at) kept.unkept.delete(changed);
        kept.failed = false;
    } catch {
        // The page goes on, says so in its banner, and the file can still be saved. The next stroke tries all of it again.
        kept.failed = true;
    }
    showBanner();
}

/** A browser short of room, or back from a long sleep, may have closed the database. */
async function writeOrReopen(values) {
    try {
        await write(values);
    } catch {
        kept.base = await openBase();
        await write(values);
    }
}

/** Letters and digits that cannot be taken for one another. */
const referenceLetters = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

/** The id of a visit, made once: sent twice, it is the same visit. 30 to the power of 12 possibilities. */
function newReference() {
    const letters = [];
    while (letters.length < 12) {
        const [byte] = crypto.getRandomValues(new Uint8Array(1));
        // 240 is a multiple of 30: every letter is as likely as any other.
        if (byte < 240) letters.push(referenceLetters[byte % 30]);
    }
    return `Y-${letters.slice(0, 4).join("")}-${letters.slice(4, 8).join("")}-${letters.slice(8).join("")}`;
}

const emptyDraft = (reference, key, order) => ({
    reference,
    key,
    order,
    particulars: {},
    limits: {},
    answers: {},
    stations: null,
    examination: {},
});

/** A new visit: what is known of the kit is filled in, and no answer is. */
function newVisit(number) {
    const reference = newReference();
    kept.visit = { reference, number, members: flattened(data.record.visit), people: [], changes: 0, saved: null };
    kept.drafts = data.record.items.map((_, n) => emptyDraft(reference, `known-${n}`, n));
}

async function openLatest() {
    const visits = await readAll("visits");
    if (visits.length === 0) return newVisit(1);
    await openVisit(visits.reduce((a, b) => (a.number > b.number ? a : b)));
}

async function openVisit(visit) {
    kept.visit = visit;
    const drafts = (await readAll("drafts")).filter(draft => draft.reference === visit.reference);
    const known = data.record.items.map(
        (_, n) => drafts.find(draft => draft.key === `known-${n}`) ?? emptyDraft(visit.reference, `known-${n}`, n),
    );
    kept.drafts = [
        ...known,
        ...drafts.filter(draft => draft.key.startsWith("added-")).sort((a, b) => a.order - b.order),
    ];
}

const isSaved = () => kept.visit.saved !== null && kept.visit.saved.changes === kept.visit.changes;
