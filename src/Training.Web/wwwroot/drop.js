// Lets a file be dropped on the form that checks files, and says at once where it is too large to send. Without script the form does the same.
const form = document.querySelector("[data-most]");
const field = form.querySelector("input[type=file]");
const tooLarge = form.querySelector("[data-too-large]");

const fits = () => [...field.files].every((file) => file.size <= Number(form.dataset.most));

for (const name of ["dragenter", "dragover"]) {
  form.addEventListener(name, (event) => {
    event.preventDefault();
    form.dataset.over = "";
  });
}

for (const name of ["dragleave", "drop"]) form.addEventListener(name, () => delete form.dataset.over);

form.addEventListener("drop", (event) => {
  event.preventDefault();
  if (event.dataTransfer.files.length === 0) return;
  field.files = event.dataTransfer.files;
  form.requestSubmit();
});
form.addEventListener("submit", (event) => {
  tooLarge.hidden = fits();
  if (!fits()) event.preventDefault();
});
