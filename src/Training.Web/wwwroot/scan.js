// Reads a certificate's code with the camera, in the page, where the browser can read codes by itself. Pictures stay on the device.
const place = document.querySelector("[data-scan]");
const pause = 250;

const canScan = async () => "BarcodeDetector" in window && navigator.mediaDevices && (await BarcodeDetector.getSupportedFormats()).includes("qr_code");

// Always our own page, whatever address the code names: another would say of its own papers what it likes.
function follow(text) {
  const [, serial, code] = /\/verify\/([0-9A-Za-z-]{12,20})(?:#(.*))?$/.exec(text) ?? [];
  const language = document.documentElement.lang;
  if (serial) location.assign(`/${language}/verify/${serial}${code ? `#${code}` : ""}`);
  else location.hash = encodeURIComponent(text);
}

async function watch(video) {
  const detector = new BarcodeDetector({ formats: ["qr_code"] });
  while (video.srcObject) {
    const [code] = await detector.detect(video).catch(() => []);
    if (code) return code.rawValue;
    await new Promise((resume) => setTimeout(resume, pause));
  }

  return null;
}

function stop(video) {
  for (const track of video.srcObject?.getTracks() ?? []) track.stop();
  video.srcObject = null;
  video.hidden = true;
}

async function scan(video, refused) {
  try {
    video.srcObject = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  } catch {
    refused.hidden = false;
    return;
  }

  refused.hidden = true;
  video.hidden = false;
  await video.play();
  const text = await watch(video);
  stop(video);
  if (text) follow(text);
}

if (await canScan()) {
  place.append(place.querySelector("template").content);
  const [button, video, refused] = ["button", "video", ".mend"].map((part) => place.querySelector(part));
  button.addEventListener("click", () => (video.srcObject ? stop(video) : scan(video, refused)));
  addEventListener("pagehide", () => stop(video));
}
