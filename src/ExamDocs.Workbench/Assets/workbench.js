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
