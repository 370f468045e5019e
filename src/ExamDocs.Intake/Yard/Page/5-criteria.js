// One criterion after the other: the question, what was seen last time, the answers, and what an answer asks for besides.

const stateWord = state => data.states[state] ?? state;

const defectFields = [
    ["part", "defectPart"],
    ["description", "defectDescription"],
    ["remedy", "defectRemedy"],
    ["notified.whom", "toldWhom"],
    ["notified.how", "toldHow"],
];

function defectPart(draft, answer) {
    const defect = (answer.defect ??= {});
    const setTo = path => value => ((defect[path] = value ?? ""), keep(draft));
    const day = el("div", {});
    const fillDay = () =>
        day.replaceChildren(
            ...(defect.danger === "later"
                ? [
                      textField(words.becomesDangerOn, defect.becomesDangerOn, setTo("becomesDangerOn"), {
                          type: "date",
                          hint: words.becomesDangerHint,
                      }),
                  ]
                : []),
        );
    const danger = choiceField(
        words.danger,
        [
            ["now", words.dangerNow],
            ["later", words.dangerLater],
        ],
        defect.danger || null,
        value => {
            setTo("danger")(value);
            if (value !== "later") defect.becomesDangerOn = "";
            fillDay();
        },
    );
    fillDay();
    const [part, description, ...rest] = defectFields.map(([path, word]) =>
        textField(words[word], defect[path], setTo(path), { long: path === "description" }),
    );
    const risk = choiceField(
        words.imminentRisk,
        [
            ["yes", words.yes],
            ["no", words.no],
        ],
        defect.imminentRisk || null,
        setTo("imminentRisk"),
    );
    const told = textField(words.toldOn, defect["notified.on"], setTo("notified.on"), { type: "date" });
    return el(
        "section",
        { class: "defect" },
        el("h3", {}, words.theDefect),
        part,
        description,
        danger,
        day,
        risk,
        ...rest,
        told,
    );
}

function noteField(draft, answer) {
    const hint = needsNote(answer.state) ? words.noteNeeded : "";
    return textField(words.note, answer.note, value => ((answer.note = value), keep(draft)), { long: true, hint });
}

function lastSeen(last, criterion) {
    const seen = lastAnswer(last, criterion.id);
    if (!seen) return null;
    const note = seen.note ? `: ${seen.note}` : "";
    return el(
        "p",
        { class: "last" },
        say(words.lastTime, last.examinedOn ?? words.noDay, stateWord(seen.state ?? "") + note),
    );
}

/** What stands below the answers; it changes with them. */
function belowAnswers(draft, answer, refill) {
    const parts = [];
    const noteShown = needsNote(answer.state) || answer.note;
    if (noteShown) parts.push(noteField(draft, answer));
    if (answer.state === "defect") parts.push(defectPart(draft, answer));
    else if (isFilled(answer.defect ?? {})) parts.push(el("p", { class: "hint" }, words.defectKept));
    const add = [];
    if (!noteShown) add.push(button(words.addNote, () => refill(true), "quiet"));
    add.push(photoPart(draft, answer));
    return [...parts, el("div", { class: "row" }, ...add)];
}

function criterionCard(draft, criterion, last, number, count) {
    const answer = (draft.answers[criterion.id] ??= { state: null, note: "" });
    const below = el("div", { class: "below" });
    const refill = wantsNote => {
        below.replaceChildren(...belowAnswers(draft, answer, refill));
        if (wantsNote !== true) return;
        below.prepend(noteField(draft, answer));
        below.querySelector(".row > button")?.remove();
        below.querySelector("textarea").focus();
    };
    const answers = criterion.states.map(state => [state, stateWord(state)]);
    const about = [
        el("p", { class: "hint" }, say(words.howExamined, number, count, criterion.means)),
        lastSeen(last, criterion),
    ];
    const set = state => {
        answer.state = state;
        keep(draft);
        refill();
        showProgress(draft);
    };
    const fields = choiceField(criterion.question, answers, answer.state, set, { about, kind: "answers" });
    fields.dataset.criterion = criterion.id;
    refill();
    return el("section", { class: "criterion", id: `criterion-${criterion.id}` }, fields, below);
}
