// Keeps on this device what the next check of a code needs without signal: the check page in every language as a stranger sees it, its
// files, the keys and lists. No page with a name on it is among them. check-worker.js then answers with the page where there is no network.
const { dataset } = document.querySelector("[data-code]");
const pages = dataset.pages.split(" ");
const facts = [dataset.keys, ...[dataset.revocation, dataset.suspension].map((list) => new URL(list).pathname)];
// The same in check.js and check-worker.js, which removes the others.
const cacheName = "check-1";
const keptForMilliseconds = 3_600_000;

// Without credentials: who is signed in stands at the head of a page.
async function get(address) {
  const fetched = await fetch(address, { credentials: "omit", cache: "no-cache" });
  if (!fetched.ok) throw new Error(`${address}: ${fetched.status}`);
  return fetched;
}

function filesOf(page) {
  const named = (selector, attribute) => [...page.querySelectorAll(selector)].map((element) => element.getAttribute(attribute));
  return [...named("link[rel=stylesheet], link[rel=icon]", "href"), ...named("script[src]", "src"), ...named("[data-reader]", "data-reader")];
}

async function isFresh(cache) {
  const kept = await cache.match(pages[0]);
  const isYoung = kept && Date.now() - Date.parse(kept.headers.get("date")) < keptForMilliseconds;
  // A new version of the program brings files of new names.
  return isYoung && Boolean(await cache.match(import.meta.url));
}

// Files first, then the pages, then away with what no page needs any more: wherever this breaks off, what is kept works.
async function keepPages(cache) {
  const fetched = await Promise.all(pages.map(get));
  const texts = await Promise.all(fetched.map((page) => page.clone().text()));
  const needed = new Set([...facts, ...texts.flatMap((text) => filesOf(new DOMParser().parseFromString(text, "text/html")))]);
  for (const file of needed) if (!await cache.match(file)) await cache.put(file, await get(file));
  for (const [index, page] of pages.entries()) await cache.put(page, fetched[index]);
  const addresses = [...needed, ...pages].map((address) => new URL(address, location.origin).href);
  for (const request of await cache.keys()) if (!addresses.includes(request.url)) await cache.delete(request);
}

// Each address has a worker of its own, and "ready" would tell of this page's alone: one that is still being set up answers nothing.
async function register(scope) {
  const registration = await navigator.serviceWorker.register(dataset.worker, { scope });
  const coming = registration.installing ?? registration.waiting;
  if (registration.active || !coming) return;
  await new Promise((resolve, reject) => coming.addEventListener("statechange", () => {
    if (coming.state === "activated") resolve();
    if (coming.state === "redundant") reject(new Error(scope));
  }));
}

async function prepare() {
  const cache = await caches.open(cacheName);
  if (!await isFresh(cache)) await keepPages(cache);
  await Promise.all(["/verify", ...pages].map(register));
  document.querySelector("[data-ready]").hidden = false;
}

// Without signal, or in a browser that keeps nothing, there is nothing to prepare.
if (window.isSecureContext) await prepare().catch(() => undefined);
