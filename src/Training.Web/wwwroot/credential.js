// Reads the token of a certificate's QR code, with no network and no page: the same questions in the same order, and the same verdicts,
// as TokenReading in Training.Documents. Nothing that the token says decides how it is read.
const longestToken = 1200;
const longestListToken = 970_000;
const longestList = 720_000;
const fewestListBytes = 16_384;
const mostListBytes = 524_288;
const lastSecond = 253_402_300_799;
// Half the order of P-256 (NIST SP 800-186, 3.2.1.3): of two signatures that verify only the one with the smaller s is taken.
const halfOrder = 0xffffffff00000000ffffffffffffffffbce6faada7179e84f3b9cac2fc632551n / 2n;

class Refusal extends Error {
  constructor(fault) {
    super(fault);
    this.fault = fault;
  }
}

// base64url of which every value has one spelling: what was read is written again and must be what came in.
function decode(text) {
  if (!/^[A-Za-z0-9_-]*$/.test(text) || text.length % 4 === 1) return null;
  const read = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  const written = btoa(read).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
  return written === text ? Uint8Array.from(read, (character) => character.charCodeAt(0)) : null;
}

function parse(bytes, fault) {
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    const json = JSON.parse(text);
    if (typeof json === "object" && json !== null && !Array.isArray(json)) return { text, json };
  } catch {
    // No text or no JSON; answered below.
  }

  throw new Refusal(fault);
}

const member = (json, name) => (Object.hasOwn(json, name) ? json[name] : undefined);

function readKid(bytes, type) {
  const { text, json } = parse(bytes, "notAToken");
  if (text.includes("\\")) throw new Refusal("headerRefused");
  if (member(json, "alg") !== "ES256") throw new Refusal("algorithmRefused");
  if (Object.keys(json).some((name) => !["alg", "kid", "typ"].includes(name))) throw new Refusal("headerRefused");
  if (member(json, "typ") !== type) throw new Refusal("typeRefused");
  const kid = member(json, "kid");
  if (typeof kid !== "string") throw new Refusal("keyUnknown");
  if (JSON.stringify({ alg: "ES256", kid, typ: type }) !== text) throw new Refusal("headerRefused");
  return kid;
}

async function verifies(key, signature, data) {
  const point = { kty: key.kty, crv: key.crv, x: key.x, y: key.y };
  const imported = await crypto.subtle.importKey("jwk", point, { name: "ECDSA", namedCurve: "P-256" }, false, ["verify"]);
  return crypto.subtle.verify({ name: "ECDSA", hash: "SHA-256" }, imported, signature, data);
}

const hasLowS = (signature) => BigInt(`0x${Array.from(signature.slice(32), (byte) => byte.toString(16).padStart(2, "0")).join("")}`) <= halfOrder;

async function open(text, longest, type, kidOf, { keys, issuer }) {
  const parts = typeof text === "string" && text.length <= longest ? text.split(".") : [];
  if (parts.length !== 3) throw new Refusal("notAToken");
  const [header, payload, signature] = parts.map(decode);
  if (!header || !payload || !signature) throw new Refusal("notCanonical");
  const kid = readKid(header, type);
  const key = keys.keys.find((known) => known.kty === "EC" && kidOf(known) === kid);
  if (!key) throw new Refusal("keyUnknown");
  if (key.iss !== issuer) throw new Refusal("keyOfAnotherIssuer");
  const data = new TextEncoder().encode(`${parts[0]}.${parts[1]}`);
  if (signature.length !== 64 || !(await verifies(key, signature, data))) throw new Refusal("badSignature");
  if (!hasLowS(signature)) throw new Refusal("twinSignature");
  return { ...parse(payload, "claimsRefused"), key };
}

const isText = (value) => typeof value === "string" && !/\p{Surrogate}/u.test(value);
const isWhole = (value, greatest) => Number.isSafeInteger(value) && value >= 0 && value <= greatest;

// ISO 7064 MOD 37,36 over twelve digits and capitals.
function isSerial(value) {
  if (!isText(value) || !/^[0-9A-Z]{12}$/.test(value)) return false;
  let product = 36;
  for (const character of value.slice(0, -1)) {
    const sum = (product + parseInt(character, 36)) % 36 || 36;
    product = (sum * 2) % 37;
  }

  return (product + parseInt(value.at(-1), 36)) % 36 === 1;
}

function readClaims({ text, json }) {
  // A name that stands there twice: JSON.parse keeps the last. Claims are flat, so a text before a colon is a name.
  const names = text.match(/"(?:[^"\\]|\\.)*"\s*:/g) ?? [];
  const isGood = names.length === Object.keys(json).length
    && ["T", "C"].includes(member(json, "kind")) && isSerial(member(json, "jti"))
    && ["iss", "name", "sch", "ver"].every((name) => isText(member(json, name)))
    && isWhole(member(json, "idx"), mostListBytes * 8 - 1) && isWhole(member(json, "nbf"), lastSecond) && isWhole(member(json, "exp"), lastSecond)
    && (!Object.hasOwn(json, "demo") || json.demo === true);
  if (!isGood) throw new Refusal("claimsRefused");
  const { iss, jti, name, sch, ver, kind, idx, nbf, exp } = json;
  return { iss, jti, name, sch, ver, kind, idx, nbf, exp, demo: json.demo === true };
}

// Stops as soon as it is longer than the longest list: a small text can unpack to a very large one.
async function unpack(bytes) {
  const reader = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip")).getReader();
  const bits = new Uint8Array(mostListBytes);
  let length = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    if (length + part.value.length > mostListBytes) {
      await reader.cancel();
      return null;
    }

    bits.set(part.value, length);
    length += part.value.length;
  }

  const isSize = length >= fewestListBytes && (length & (length - 1)) === 0;
  return isSize ? bits.slice(0, length) : null;
}

async function readList(token, purpose, trust) {
  const page = trust.lists[purpose];
  const { json, key } = await open(token, longestListToken, "vc+jwt", (known) => `${known.iss}#${known.kid}`, trust);
  // Lists are in no log: one of a key that others may have says nothing.
  if (key.revoked || json.issuer !== trust.issuer || json.id !== page) return null;
  const subject = json.credentialSubject;
  if (subject?.type !== "BitstringStatusList" || subject.statusPurpose !== purpose || typeof subject.encodedList !== "string") return null;
  const isPacked = subject.encodedList.startsWith("u") && subject.encodedList.length <= longestList;
  const packed = isPacked ? decode(subject.encodedList.slice(1)) : null;
  const asOf = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/.test(json.validFrom) ? Date.parse(json.validFrom) / 1000 : NaN;
  const bits = packed && Number.isFinite(asOf) ? await unpack(packed) : null;
  return bits && { bits, asOf };
}

async function findNewest(purpose, trust, index) {
  let newest = null;
  for (const token of trust.listTokens) {
    // One that does not verify, or ends before the place, is passed over: then the status is not known, and the verdict says so.
    const list = await readList(token, purpose, trust).catch(() => null);
    if (list && index < list.bits.length * 8 && (!newest || list.asOf > newest.asOf)) newest = list;
  }

  return newest;
}

const isSet = (list, index) => (list.bits[index >> 3] & (0x80 >> (index & 7))) !== 0;

/**
 * Reads a token. Never throws for what a token or list says.
 * @param {string|null} token what was scanned after the "#"
 * @param {object} trust whom to believe
 * @param {{keys: object[]}} trust.keys the issuer's key set with all keys, as JsonWebKeySet.WriteAll writes it
 * @param {string} trust.issuer DID of the issuer
 * @param {{revocation: string, suspension: string}} trust.lists addresses of the status lists
 * @param {string[]} trust.listTokens the status list credentials at hand
 * @param {(serial: string) => number|null} [trust.loggedAt] seconds since 1970 at which the log has a paper; null where not known
 * @param {number} now milliseconds since 1970
 * @returns {Promise<{verdict: string, fault?: string, claims?: object, asOf?: number|null}>} verdict: refused, withdrawn, suspended,
 *   notYetValid, expired or current; asOf, in seconds, is that of the status list; null where the status is not known
 */
export async function readToken(token, trust, now) {
  try {
    const opened = await open(token, longestToken, "gate+jwt", (known) => known.kid, trust);
    const claims = readClaims(opened);
    if (claims.iss !== trust.issuer) throw new Refusal("issuerRefused");
    const loggedAt = trust.loggedAt?.(claims.jti) ?? null;
    const isBelieved = !opened.key.revoked || (loggedAt !== null && loggedAt < opened.key.revoked.revoked_at);
    if (!isBelieved) throw new Refusal("keyNotBelieved");
    return await judge(claims, trust, now);
  } catch (refusal) {
    if (refusal instanceof Refusal) return { verdict: "refused", fault: refusal.fault };
    throw refusal;
  }
}

async function judge(claims, trust, now) {
  const withdrawals = await findNewest("revocation", trust, claims.idx);
  if (withdrawals && isSet(withdrawals, claims.idx)) return { verdict: "withdrawn", claims, asOf: withdrawals.asOf };
  const suspensions = await findNewest("suspension", trust, claims.idx);
  if (suspensions && isSet(suspensions, claims.idx)) return { verdict: "suspended", claims, asOf: suspensions.asOf };
  if (now < claims.nbf * 1000) return { verdict: "notYetValid", claims };
  if (now >= claims.exp * 1000) return { verdict: "expired", claims };
  return { verdict: "current", claims, asOf: withdrawals && suspensions ? Math.min(withdrawals.asOf, suspensions.asOf) : null };
}
