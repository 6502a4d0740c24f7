// Answers for the check pages where there is no network, with the page that check.js kept: that page then reads the code itself. It keeps
// nothing, so no page with a name on it is ever kept.
const cacheName = "check-1";
const patience = 8000;

async function removeOthers() {
  for (const name of await caches.keys()) if (name.startsWith("check-") && name !== cacheName) await caches.delete(name);
  await self.clients.claim();
}

async function findPage(path) {
  const cache = await caches.open(cacheName);
  const pages = (await cache.keys()).map((request) => new URL(request.url).pathname).filter((kept) => /^\/\w\w\/verify$/.test(kept));
  const wished = [path.split("/")[1], ...navigator.languages.map((language) => language.split("-")[0])].map((tag) => `/${tag}/verify`);
  const page = wished.find((one) => pages.includes(one)) ?? pages[0];
  return page && cache.match(page);
}

const tooLate = () => new Promise((_, refuse) => setTimeout(refuse, patience));

async function answerPage(request) {
  const kept = await findPage(new URL(request.url).pathname);
  if (!kept) return fetch(request);
  try {
    // Weak signal is no signal: nobody at a gate waits half a minute.
    const fetched = await Promise.race([fetch(request), tooLate()]);
    // What stands in front of a server that is down says so with these.
    return fetched.status >= 502 && fetched.status <= 504 ? kept : fetched;
  } catch {
    return kept;
  }
}

async function answerFile(request) {
  const cache = await caches.open(cacheName);
  const kept = await cache.match(request);
  // A file with a version in its address never changes.
  if (kept && new URL(request.url).searchParams.has("v")) return kept;
  return fetch(request).catch(() => kept ?? Response.error());
}

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(removeOthers()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== location.origin) return;
  // What scripts ask for are keys and lists: told from here they would look as if they had just come.
  if (request.destination === "") return;
  event.respondWith(request.mode === "navigate" ? answerPage(request) : answerFile(request));
});
