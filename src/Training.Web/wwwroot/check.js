// Checks the code of a certificate on this device: what stands behind the "#" of the address, which is sent to nobody, against keys and
// lists that were kept while there was signal. It has no words: those stand in the page. docs/credentials.md, "The check page".
const { dataset } = document.querySelector("[data-code]");
const answer = document.querySelector("[data-answer]");
const isAlone = answer.dataset.answer === "alone";
const trusted = { revocation: dataset.revocation, suspension: dataset.suspension };
// Served here under the same path, whatever the public address is.
const lists = Object.values(trusted).map((list) => new URL(list).pathname);
// The same in keep.js and check-worker.js, which removes the others.
const cacheName = "check-1";
const daySeconds = 86_400;
const patience = 8000;
const pause = 15_000;

const code = () => location.hash.slice(1);
const serialOfAddress = () => (location.pathname.split("/verify/")[1] ?? "").replaceAll("-", "").toUpperCase();
// The kept page under the address of a serial: the register could not be asked.
const isStandIn = isAlone && serialOfAddress() !== "";

/* What is kept. */

const openCache = () => caches.open(cacheName);

async function textOf(cache, address) {
  return (await cache.match(address))?.text() ?? null;
}

async function findTrust() {
  const cache = await openCache();
  const keys = await textOf(cache, dataset.keys);
  const tokens = await Promise.all(lists.map((list) => textOf(cache, list)));
  return keys && { keys: JSON.parse(keys), issuer: dataset.issuer, lists: trusted, listTokens: tokens.filter((token) => token) };
}

async function keep(cache, address) {
  const fetched = await fetch(address, { credentials: "omit", cache: "no-cache", signal: AbortSignal.timeout(patience) });
  if (fetched.ok) await cache.put(address, fetched);
  return fetched.ok;
}

async function refresh() {
  const cache = await openCache();
  const kept = await Promise.all([dataset.keys, ...lists].map((address) => keep(cache, address).catch(() => false)));
  return kept.includes(true);
}

/* What is said. */

const dayFormat = new Intl.DateTimeFormat(dataset.dates, { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
const momentFormat = new Intl.DateTimeFormat(dataset.dates, { day: "numeric", month: "long", year: "numeric" });
const timeFormat = new Intl.DateTimeFormat(dataset.dates, { hour: "2-digit", minute: "2-digit", hourCycle: "h23" });

// A day begins and ends at midnight where the certificate was decided; by the clocks of this device it may be another day. How far that
// midnight is from one in UTC tells the offset, as far as it lies between UTC−11:59 and UTC+12.
function dayFrom(midnight) {
  const past = midnight % daySeconds;
  return midnight - (past < daySeconds / 2 ? past : past - daySeconds);
}

const firstDay = (claims) => dayFormat.format(dayFrom(claims.nbf) * 1000);
const lastDay = (claims) => dayFormat.format((dayFrom(claims.exp + 1) - daySeconds) * 1000);
const moment = (seconds) => `${momentFormat.format(seconds * 1000)}, ${timeFormat.format(seconds * 1000)}`;
const fill = (text, holes) => text.replace(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
const wordsOf = (name) => document.querySelector(`template[data-text="${name}"]`).content.textContent;

// Whatever is set is read out, so what stands there already is left alone.
function put(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

function say(selector, holes = {}) {
  const [says, does] = document.querySelector(`template${selector}`).content.querySelectorAll("p");
  put(answer.querySelector("[data-says]"), fill(says.textContent, holes));
  put(answer.querySelector("[data-does]"), fill(does.textContent, holes));
  answer.hidden = false;
}

function tell(verdict, claims, asOf) {
  const table = answer.querySelector("[data-particulars]");
  table.hidden = !claims;
  const demo = document.querySelector("[data-demo]");
  if (demo) demo.hidden = !claims?.demo;
  if (!claims) return;
  const scheme = document.querySelector(`template[data-scheme="${CSS.escape(claims.sch)}"]`);
  const shown = {
    name: claims.name,
    scheme: scheme?.content.textContent ?? claims.sch,
    through: lastDay(claims),
    serial: claims.jti.match(/.{4}/g).join("-"),
    asOf: asOf ? fill(wordsOf("asOf"), { asOf: moment(asOf) }) : wordsOf("noList"),
  };
  for (const cell of table.querySelectorAll("[data-claim]")) put(cell, shown[cell.dataset.claim]);
  for (const row of table.querySelectorAll("[data-kind]")) row.hidden = row.dataset.kind !== claims.kind;
  for (const row of table.querySelectorAll("[data-when]")) row.hidden = !row.dataset.when.split(" ").includes(verdict);
}

function sayVerdict({ verdict, fault, claims, asOf }, now) {
  const serial = serialOfAddress();
  if (claims && serial && serial !== claims.jti) {
    say('[data-verdict="otherSerial"]');
    tell(verdict);
    return;
  }

  const days = Math.floor((now / 1000 - asOf) / daySeconds);
  const isOld = days >= Number(dataset.oldDays);
  const which = verdict !== "current" ? verdict : asOf === null ? "currentUnknown" : isOld ? "currentOld" : verdict;
  say(fault ? `[data-faults~="${fault}"]` : `[data-verdict="${which}"]`, claims && { from: firstDay(claims), through: lastDay(claims), days });
  tell(verdict, claims, asOf);
}

async function judge(readToken) {
  if (!code()) {
    if (isStandIn) say('[data-verdict="noCode"]');
    return true;
  }

  const trust = await findTrust();
  if (!trust) return false;
  const now = Date.now();
  const result = await readToken(code(), trust, now);
  // A list is not from the future: then the clock of this device is behind, and an ended paper would pass for current.
  const behind = result.asOf && result.asOf * 1000 > now;
  sayVerdict(behind ? await readToken(code(), trust, result.asOf * 1000) : result, now);
  return true;
}

// The other languages of this page, with the code: a link would leave it behind.
function carryCode() {
  const page = serialOfAddress() ? `/verify/${serialOfAddress()}` : "/verify";
  for (const link of document.querySelectorAll("nav a[hreflang]")) link.href = `/${link.hreflang}${page}${location.hash}`;
}

// It answers with a page or that it knows no such paper; all else leaves what the code says.
async function answersNow() {
  const asked = await fetch(location.pathname, { credentials: "omit", cache: "no-store", signal: AbortSignal.timeout(patience) }).catch(() => null);
  return asked !== null && (asked.ok || asked.status === 404);
}

// A device says that it has signal before it has, so the page stays until the register answered: what it says is not lost for nothing.
let nextAsking;
async function askRegister(hasSignal) {
  clearTimeout(nextAsking);
  if (hasSignal && await answersNow()) location.reload();
  else if (navigator.onLine) nextAsking = setTimeout(check, pause);
}

async function check() {
  const { readToken } = await import(dataset.reader);
  if (code()) carryCode();
  const wasJudged = await judge(readToken);
  const hasSignal = await refresh();
  const isJudged = hasSignal ? await judge(readToken) : wasJudged;
  if (!isJudged) say('[data-verdict="noKeys"]');
  if (isStandIn) await askRegister(hasSignal);
}

if (window.isSecureContext) {
  addEventListener("hashchange", check);
  addEventListener("online", check);
  await check();
} else {
  document.querySelector("[data-insecure]").hidden = false;
}
