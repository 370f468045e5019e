// Photos: made smaller, stripped of all that the camera wrote into them, and named by the SHA-256 of what is kept. The program compares
// name and picture when it reads the file.

/** Pixels of the longer side at most; twice what is printed. */
const photoSide = 1600;

async function shrunk(file) {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, photoSide / Math.max(picture.width, picture.height));
    const canvas = el("canvas", {
        width: Math.round(picture.width * scale),
        height: Math.round(picture.height * scale),
    });
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
    const jpeg = await new Promise(resolve => canvas.toBlob(resolve, "image/jpeg", 0.85));
    return jpeg.arrayBuffer();
}

async function sha256(bytes) {
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return [...digest].map(byte => byte.toString(16).padStart(2, "0")).join("");
}

async function takePhoto(file) {
    const bytes = await shrunk(file);
    const name = `photos/sha256-${await sha256(bytes)}.jpg`;
    await write([["photos", { name, bytes }]]);
    return name;
}

/** Drawn, so that the page needs no leave to load pictures. */
async function drawPhoto(canvas, name) {
    const photo = (await readAll("photos")).find(kept => kept.name === name);
    if (!photo) return;
    const picture = await createImageBitmap(new Blob([photo.bytes], { type: "image/jpeg" }));
    canvas.width = 160;
    canvas.height = Math.round((160 * picture.height) / picture.width);
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
}

function photoPart(draft, answer) {
    const part = el("div", { class: "photo" });
    const fill = fault => {
        part.replaceChildren(
            ...(answer.photo ? shownPhoto(answer, set) : [photoField(set, fill)]),
            el("p", { class: "fault", role: "status" }, fault ?? ""),
        );
    };
    const set = name => {
        answer.photo = name;
        keep(draft);
        fill();
    };
    fill();
    return part;
}

function photoField(set, fill) {
    const control = el("input", { type: "file", accept: "image/*", capture: "environment" });
    control.addEventListener("change", async () => {
        try {
            if (control.files[0]) set(await takePhoto(control.files[0]));
        } catch {
            fill(words.photoRefused);
        }
    });
    return el("label", { class: "button quiet" }, control, words.addPhoto);
}

function shownPhoto(answer, set) {
    const canvas = el("canvas", { role: "img", "aria-label": words.photo, width: 160, height: 120 });
    drawPhoto(canvas, answer.photo);
    return [canvas, button(words.removePhoto, () => set(null), "quiet")];
}

/** The photos that the record names. */
async function photosNamed() {
    const names = new Set(
        kept.drafts.flatMap(draft => observationsOf(draft).map(observation => observation.photo)).filter(name => name),
    );
    return names.size === 0 ? [] : (await readAll("photos")).filter(photo => names.has(photo.name));
}
