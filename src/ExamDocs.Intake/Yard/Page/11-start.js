// Opens the page: in one tab only, where it was left.

function viewOf(hash) {
    const [name, key] = hash.slice(1).split("/");
    const draft = kept.drafts.find(candidate => candidate.key === key);
    if (name === "item" && draft) return itemView(draft);
    return name === "items" ? itemsView() : name === "save" ? saveView() : visitView();
}

const tabs = [
    ["#visit", "visit"],
    ["#items", "items"],
    ["#save", "save"],
];

function showTabs() {
    const at =
        tabs.find(([hash]) => hash === location.hash) ?? (location.hash.startsWith("#item/") ? tabs[1] : tabs[0]);
    document
        .getElementById("tabs")
        .replaceChildren(
            ...tabs.map(tab => el("a", { href: tab[0], "aria-current": tab === at ? "page" : null }, words[tab[1]])),
        );
}

function show() {
    const main = document.getElementById("main");
    main.replaceChildren(...viewOf(location.hash).filter(part => part));
    showTabs();
}

/** A new page: read from its heading on. */
function turnPage() {
    show();
    window.scrollTo(0, 0);
    document.querySelector("h1").focus({ preventScroll: true });
}

const showSentence = text =>
    document
        .getElementById("main")
        .replaceChildren(el("h1", { tabindex: -1 }, words.title), el("p", { class: "warning" }, text));

async function askToStay() {
    const stays = await navigator.storage?.persist?.().catch(() => false);
    if (!stays) document.getElementById("stay").textContent = words.mayBeCleared;
}

async function open() {
    try {
        kept.base = await openBase();
        await openLatest();
        await keepUncounted(null);
    } catch {
        showSentence(words.noBase);
        return;
    }
    window.addEventListener("hashchange", turnPage);
    show();
    showBanner();
    await askToStay();
}

/** Holds the lock until the tab is closed; another tab waits for it. */
async function openAlone() {
    if (!navigator.locks) return showSentence(words.noLocks);
    const name = baseName();
    const untilClosed = () => open().then(() => new Promise(() => {}));
    const isFirst = await new Promise(resolve => {
        navigator.locks
            .request(name, { ifAvailable: true }, lock => (resolve(lock !== null), lock ? untilClosed() : undefined))
            .catch(() => resolve(null));
    });
    if (isFirst === null) return showSentence(words.noLocks);
    if (isFirst) return;
    showSentence(words.openElsewhere);
    await navigator.locks.request(name, untilClosed);
}

const data = JSON.parse(document.getElementById("data").textContent);
const { words } = data;
openAlone();
