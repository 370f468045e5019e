// Elements of the page, and the fields that are typed into. Texts become text nodes: nothing that was typed can become markup.

function el(tag, attributes = {}, ...children) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) {
        if (value === null || value === undefined || value === false) continue;
        element.setAttribute(name, value === true ? "" : value);
    }
    element.append(...children.flat().filter(child => child !== null && child !== undefined && child !== ""));
    return element;
}

/** A phrase with its gaps {0}, {1} filled. */
const say = (phrase, ...values) => phrase.replace(/\{(\d)\}/g, (_, n) => String(values[Number(n)]));

let elementsNumbered = 0;
const newId = () => `e${++elementsNumbered}`;

function button(text, act, kind = "") {
    const made = el("button", { type: "button", class: kind }, text);
    made.addEventListener("click", act);
    return made;
}

function labelled(label, control, hint) {
    control.id = newId();
    if (!hint) return el("div", { class: "field" }, el("label", { for: control.id }, label), control);
    const hintId = newId();
    control.setAttribute("aria-describedby", hintId);
    return el(
        "div",
        { class: "field" },
        el("label", { for: control.id }, label),
        el("span", { id: hintId, class: "hint" }, hint),
        control,
    );
}

/** @param set is called with the whole text at every stroke. */
function textField(label, value, set, { hint, long, type = "text", mode } = {}) {
    const control = long ? el("textarea", { rows: 2 }) : el("input", { type, inputmode: mode, autocomplete: "off" });
    control.value = value ?? "";
    control.addEventListener("input", () => set(control.value));
    return labelled(label, control, hint);
}

/** 1,250 is none: a thousand and more in one country, one and a quarter in another. 0,250 is a quarter everywhere. */
const isNumber = text => /^\d+([.,]\d+)?$/.test(text.trim()) && !/^[1-9]\d{0,2},\d{3}$/.test(text.trim());

/** A number, with a word beside it at once where the text is none. The text is kept and exported as it is. */
function numberField(label, value, set, hint) {
    const fault = el("span", { class: "fault", role: "status" });
    const judge = text => {
        const isBad = text.trim() !== "" && !isNumber(text);
        fault.textContent = isBad ? words.notANumber : "";
        control.setAttribute("aria-invalid", isBad);
    };
    const field = textField(label, value, text => (set(text), judge(text)), { hint, mode: "decimal" });
    const control = field.querySelector("input");
    field.append(fault);
    judge(value ?? "");
    return field;
}

function selectField(label, options, value, set, hint) {
    const control = el(
        "select",
        {},
        el("option", { value: "" }, words.choose),
        ...options.map(([v, t]) => el("option", { value: v }, t)),
    );
    control.value = value ?? "";
    control.addEventListener("change", () => set(control.value));
    return labelled(label, control, hint);
}

/** Large radio buttons, none of them chosen beforehand, and a button that takes the answer back. */
function choiceField(legend, options, value, set, { about = [], kind = "" } = {}) {
    const name = newId();
    const clear = button(words.takeBack, () => choose(null), "quiet take-back");
    const radios = options.map(([v, text]) => {
        const radio = el("input", { type: "radio", name, value: v, id: newId() });
        radio.addEventListener("change", () => choose(v));
        return radio;
    });
    const show = chosen => {
        radios.forEach(radio => (radio.checked = radio.value === chosen));
        clear.hidden = chosen === null;
    };
    const choose = chosen => {
        if (chosen === null) radios[0].focus();
        show(chosen);
        set(chosen);
    };
    show(value ?? null);
    const labels = radios.map((radio, n) =>
        el("label", { class: `choice choice-${radio.value}`, for: radio.id }, radio, options[n][1]),
    );
    return el(
        "fieldset",
        { class: kind },
        el("legend", {}, legend),
        ...about,
        el("div", { class: "choices" }, ...labels, clear),
    );
}

const folded = (title, ...content) => el("details", {}, el("summary", {}, title), ...content);
