// Saves the visit as a file, and says what is still only on this phone.

function download(name, blob) {
    const link = el("a", { href: URL.createObjectURL(blob), download: name });
    document.body.append(link);
    link.click();
    link.remove();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Every file holds the whole visit so far: the last one is enough, and an earlier one does no harm. */
async function saveFile() {
    const changes = kept.visit.changes;
    const [text, photos, { reference }] = [fileText(), await photosNamed(), kept.visit];
    // In a folder the files stand, and are read, in the order in which they were saved.
    const name = `${reference}-${String(changes).padStart(6, "0")}.${photos.length > 0 ? "zip" : "json"}`;
    const files = [
        { name: `${reference}.json`, content: new TextEncoder().encode(text) },
        ...photos.map(p => ({ name: p.name, content: new Uint8Array(p.bytes) })),
    ];
    download(name, photos.length > 0 ? archive(files) : new Blob([text], { type: "application/json" }));
    kept.visit.saved = { name, changes };
    await keepUncounted(null);
}

function showBanner() {
    const banner = document.getElementById("banner");
    const text = kept.failed
        ? words.notKept
        : isSaved()
          ? say(words.savedAs, kept.visit.saved.name)
          : kept.visit.saved
            ? say(words.changedSince, kept.visit.saved.name)
            : words.onlyHere;
    banner.className = kept.failed ? "failed" : isSaved() ? "saved" : "only-here";
    if (banner.textContent !== text) banner.textContent = text;
}

function missingList() {
    const parts = draftsRecorded()
        .map(draft => [draft, isExamined(draft) ? missingIn(draft) : [words.notBegun]])
        .filter(([, missing]) => missing.length > 0);
    const visit = missingInVisit();
    if (parts.length === 0 && visit.length === 0) return el("p", {}, words.nothingMissing);
    const line = (href, name, missing) =>
        el("li", {}, el("a", { href }, name), el("ul", {}, ...missing.map(sentence => el("li", {}, sentence))));
    return el(
        "ul",
        { class: "missing" },
        visit.length > 0 ? line("#visit", words.visit, visit) : null,
        ...parts.map(([draft, missing]) => line(`#item/${draft.key}`, itemOf(draft).id || words.newItem, missing)),
    );
}

async function startAnother() {
    const visits = await readAll("visits");
    newVisit(Math.max(...visits.map(visit => visit.number)) + 1);
    await keepUncounted(null);
    location.hash = "#visit";
}

function otherVisits() {
    const part = el("div", {});
    readAll("visits").then(
        visits => {
            const others = visits.filter(visit => visit.reference !== kept.visit.reference);
            if (others.length === 0) return;
            const open = visit =>
                button(visit.reference, async () => (await openVisit(visit), show(), showBanner()), "quiet");
            part.append(el("h2", {}, words.otherVisits), el("div", { class: "row" }, ...others.map(open)));
        },
        () => {},
    );
    return part;
}

function saveView() {
    const photos = kept.drafts.flatMap(observationsOf).filter(observation => observation.photo).length;
    return [
        el("h1", { tabindex: -1 }, words.save),
        el("h2", {}, words.stillMissing),
        missingList(),
        el("p", {}, words.decidesNothing),
        photos > 0 ? el("p", {}, say(words.photosWithin, photos)) : null,
        el(
            "div",
            { class: "row" },
            // Whoever has turned to another page meanwhile goes on there undisturbed.
            button(words.saveFile, async () => (await saveFile(), location.hash === "#save" && show())),
        ),
        el("p", { class: "hint" }, words.sendIt),
        isSaved() ? el("div", { class: "row" }, button(words.startAnother, startAnother, "quiet")) : null,
        otherVisits(),
    ];
}
