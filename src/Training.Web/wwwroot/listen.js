// Reads a page out with the voice of the device, part by part. Without a voice in the page's language there is no button.
const parts = document.querySelectorAll("[data-listen]");
const language = document.documentElement.lang;
const speech = window.speechSynthesis;

// What is shown and not said: numbers of sources, fields and buttons. Drawings are said by their description.
const silent = ".note, button, .kept, .form, [hidden]";

function findVoice() {
  return speech.getVoices().find((voice) => voice.lang.toLowerCase().startsWith(language));
}

// One utterance a paragraph: long ones are cut off by some devices.
function textsOf(part) {
  const copy = document.createElement("div");
  // A question is said before its answers; it stands above their form.
  const stem = document.getElementById(part.dataset.after ?? "");
  for (let before = stem; before && before !== part; before = before.nextElementSibling) {
    if (before.tagName !== "BUTTON") copy.append(before.cloneNode(true));
  }

  copy.append(part.cloneNode(true));
  for (const drawing of copy.querySelectorAll("svg")) {
    const said = [...drawing.querySelectorAll(":scope > title, :scope > desc")].map((text) => text.textContent).join(". ");
    drawing.replaceWith(Object.assign(document.createElement("p"), { textContent: said }));
  }

  for (const gone of copy.querySelectorAll(silent)) gone.remove();
  const lines = [...copy.querySelectorAll("h1, h2, h3, p, li, th, td, dt, dd, legend, label, summary")]
    .filter((line) => !line.querySelector("p, li, label"));
  return lines.map((line) => line.textContent.replace(/\s+/g, " ").trim()).filter((text) => text.length > 0);
}

function addButton(part) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "second";
  button.textContent = part.dataset.listen;
  part.before(button);
  let isOn = false;

  const stop = () => {
    isOn = false;
    speech.cancel();
    button.textContent = part.dataset.listen;
  };

  button.addEventListener("click", () => {
    if (isOn) {
      stop();
      return;
    }

    speech.cancel();
    isOn = true;
    button.textContent = part.dataset.stop;
    const texts = textsOf(part);
    texts.forEach((text, index) => {
      const utterance = new SpeechSynthesisUtterance(text);
      utterance.lang = language;
      utterance.voice = findVoice();
      if (index === texts.length - 1) utterance.addEventListener("end", stop);
      speech.speak(utterance);
    });
  });
  window.addEventListener("pagehide", stop);
}

// Voices arrive after the page on many devices.
let isReady = false;
function start() {
  if (isReady || !findVoice()) return;
  isReady = true;
  parts.forEach(addButton);
}

if (speech && parts.length > 0) {
  start();
  speech.addEventListener?.("voiceschanged", start);
}
