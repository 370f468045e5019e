// Only what HTML cannot do: a file dropped onto its form.
for (const form of document.querySelectorAll("form.drop")) {
  const input = form.querySelector("input[type=file]");
  for (const over of ["dragenter", "dragover"]) {
    form.addEventListener(over, (event) => { event.preventDefault(); form.classList.add("over"); });
  }
  form.addEventListener("dragleave", () => form.classList.remove("over"));
  form.addEventListener("drop", (event) => {
    event.preventDefault();
    form.classList.remove("over");
    if (event.dataTransfer.files.length > 0) {
      input.files = event.dataTransfer.files;
      form.requestSubmit();
    }
  });
}

// Recording: what is typed is saved as it is typed, and one key gives one answer. Without this script the buttons save.
const sheet = document.querySelector("form.sheet");
if (sheet) {
  const was = JSON.parse(sheet.elements.was.value);
  const saving = document.getElementById("saving");
  const pending = new Map();
  let [busy, timer, sender, sent] = [false, 0, null, new Map()];

  const say = (what) => { saving.textContent = what ? saving.dataset[what] : ""; saving.className = what ? `is-${what}` : ""; };

  const refresh = (page) => {
    for (const part of document.querySelectorAll("[data-live]")) {
      const other = page.getElementById(part.id);
      // What is the same stays: pictures are not fetched again after each answer.
      if (other && other.innerHTML !== part.innerHTML) part.replaceChildren(...other.childNodes);
    }
  };

  // A photo is sent as soon as it is chosen; until it has arrived it stays in its field, and goes with the buttons too.
  const upload = async (input) => {
    const body = new FormData();
    const shown = input.name.replace("photo/", "photo-shown/");
    for (const name of ["__RequestVerificationToken", shown]) body.set(name, sheet.elements[name].value);
    body.set(input.name, input.files[0]);
    say("saving");
    try {
      const answer = await fetch(sheet.action, { method: "POST", body });
      if (!answer.ok && answer.status !== 422) throw new Error(answer.statusText);
      refresh(new DOMParser().parseFromString(await answer.text(), "text/html"));
      input.value = "";
      say(answer.ok ? "saved" : null);
    } catch {
      say("failed");
      setTimeout(() => { if (input.files.length > 0 && !leaving) upload(input); }, 3000);
    }
  };

  const save = (after) => {
    clearTimeout(timer);
    timer = setTimeout(send, after);
    say("saving");
  };

  const post = (fields) => {
    const body = new URLSearchParams({ __RequestVerificationToken: sheet.elements.__RequestVerificationToken.value });
    const shown = {};
    for (const [name, value] of fields) {
      body.set(name, value);
      shown[name] = sent.get(name) ?? was[name] ?? "";
    }
    body.set("was", JSON.stringify(shown));
    // It arrives although its page was left meanwhile; of that browsers allow 64 KiB.
    return fetch(sheet.action, { method: "POST", body, keepalive: body.toString().length < 60_000 });
  };

  const send = async () => {
    if (busy || pending.size === 0) return;
    busy = true;
    const fields = new Map(pending);
    pending.clear();
    try {
      const asked = post(fields);
      sent = fields;
      const answer = await asked;
      if (!answer.ok && answer.status !== 409) throw new Error(answer.statusText);
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const now = JSON.parse(page.querySelector("form.sheet").elements.was.value);
      for (const [name, value] of fields) {
        const [field, stands] = [sheet.elements[name], now[name] ?? ""];
        const isText = field instanceof Element;
        // What was not saved stays unsaved for the next save too: the other page's value is not overwritten.
        if (answer.ok) was[name] = isText ? stands : value;
        else if (stands === value) was[name] = value;
        if (answer.ok && isText && field.value === value && document.activeElement !== field) field.value = stands;
      }
      refresh(page);
      // A note or a defect that stays in the record stays in sight, whatever the answer is now.
      for (const step of sheet.querySelectorAll(".criterion")) {
        step.classList.add(...(page.getElementById(step.id)?.classList ?? []));
      }
      say(answer.ok ? "saved" : null);
      if (!answer.ok) sender = null;
      if (!answer.ok) document.getElementById("not-saved").scrollIntoView({ block: "center" });
    } catch {
      for (const [name, value] of fields) if (!pending.has(name)) pending.set(name, value);
      say("failed");
      sender = null;
      timer = setTimeout(send, 3000);
    }
    [busy, sent] = [false, new Map()];
    if (pending.size > 0 && saving.className !== "is-failed") save(0);
    if (sender && pending.size === 0) sheet.requestSubmit(sender);
  };

  const changed = (field, after) => {
    if (!field.name.includes("/") || field.type === "file") return;
    // Half a day is no day, and must not take away the one that stands.
    if (field.validity?.badInput) return;
    if (field.value === (was[field.name] ?? "") && !pending.has(field.name) && !busy) return;
    pending.set(field.name, field.value);
    save(after);
  };
  sheet.addEventListener("input", (event) => { if (event.target.type !== "radio") changed(event.target, 700); });
  sheet.addEventListener("change", (event) => {
    if (event.target.type === "file" && event.target.files.length > 0) upload(event.target);
    else changed(event.target, 0);
  });
  sheet.addEventListener("submit", (event) => {
    // What is on its way arrives first: the page must not be taken for another one that knows nothing of it. And a page that cannot
    // be sent must not make way for an error that shows nothing of what was typed.
    if (busy || pending.size > 0) {
      event.preventDefault();
      sender = event.submitter;
      clearTimeout(timer);
      send();
      return;
    }
    clearTimeout(timer);
    sheet.elements.was.value = JSON.stringify(was);
  });
  addEventListener("beforeunload", (event) => { if (pending.size > 0 || busy) event.preventDefault(); });
  // What is answered while the next page is on its way is still saved; and a page that is shown again from memory is an old one.
  addEventListener("pagehide", () => { if (pending.size > 0) post(pending); });
  addEventListener("pageshow", (event) => { if (event.persisted) location.reload(); });

  const isVisible = (element) => element.offsetParent !== null;
  const go = (element) => {
    if (!element) return;
    element.focus({ preventScroll: true });
    element.scrollIntoView({ block: "center" });
  };
  const nextOf = (element, what) => [...sheet.querySelectorAll(what)].find((other) =>
    isVisible(other) && element.compareDocumentPosition(other) === Node.DOCUMENT_POSITION_FOLLOWING);

  document.addEventListener("keydown", (event) => {
    // A key that is held down gives no second answer.
    if (event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    const at = document.activeElement;
    const typing = at.matches("input:not([type=radio]), textarea, select");
    if (event.key === "Enter" && at.matches("form.sheet input:not([type=radio], [type=file])")) {
      event.preventDefault();
      const stops = at.id === "place" ? "button" : at.matches("[data-stop]") ? "[data-stop]" : "[data-stop], input:not([type=radio], [type=file]), textarea, select";
      go(nextOf(at, stops));
      return;
    }
    const step = at.closest("[data-step]");
    if (typing || !step) return;
    const answer = step.querySelector(`input[data-key="${CSS.escape(event.key.toLowerCase())}"]`);
    if (!answer) return;
    event.preventDefault();
    answer.click();
    const note = step.querySelector(".note-field input");
    go(note && ["noted", "doubt", "defect"].includes(answer.value) ? note : answer.value ? nextOf(step, "[data-stop]") : step);
  });

  // The first criterion without an answer; a page opened at a field stays there.
  if (!location.hash) {
    const open = [...sheet.querySelectorAll("[data-step]")].find((step) => !step.querySelector("input:checked"));
    open?.focus({ preventScroll: true });
    if (open && open.previousElementSibling?.matches("[data-step]")) open.scrollIntoView({ block: "center" });
  }
}
