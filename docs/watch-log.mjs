// Watches the log of an issuer of certificates, as docs/log.md describes it. Needs node and nothing else.
//
//   node docs/watch-log.mjs https://training.example.org head.json [serial]
//
// Fetches the newest signed head and checks its signature. Where head.json holds an older one, it checks that the log only grew since. Given
// a serial, it checks that the log holds what it says about that paper. Then it keeps the newest head in head.json for the next time.
import { createHash, webcrypto } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";

const [address, file, serial] = process.argv.slice(2);
const bytesOf = (hex) => Buffer.from(hex, "hex");
const sha256 = (...parts) => createHash("sha256").update(Buffer.concat(parts)).digest();
const nodeHash = (left, right) => sha256(Buffer.of(1), left, right);
const leafHash = (leaf) => sha256(Buffer.of(0), leaf);

function fail(reason) {
  console.error(reason);
  process.exit(1);
}

async function get(path) {
  const answer = await fetch(new URL(path, address));
  if (!answer.ok) fail(`${path}: ${answer.status}`);
  return answer.json();
}

// RFC 6962, 3.5: version 0, type 1, milliseconds, size, root.
async function isSigned(head) {
  const { keys } = await get("/.well-known/jwks.json");
  const key = keys.find((one) => one.kid === head.kid && one.crv === "P-256");
  if (!key) return false;
  const signed = Buffer.alloc(18);
  signed[1] = 1;
  signed.writeBigUInt64BE(BigInt(head.timestamp), 2);
  signed.writeBigUInt64BE(BigInt(head.size), 10);
  const { kty, crv, x, y } = key;
  const imported = await webcrypto.subtle.importKey("jwk", { kty, crv, x, y }, { name: "ECDSA", namedCurve: crv }, false, ["verify"]);
  return webcrypto.subtle.verify({ name: "ECDSA", hash: "SHA-256" }, imported, bytesOf(head.signature), Buffer.concat([signed, bytesOf(head.root)]));
}

// RFC 9162, 2.1.3.2.
function isIncluded(leaf, index, head, path) {
  let [node, last, hash] = [index, head.size - 1, leafHash(leaf)];
  if (index >= head.size) return false;
  for (const beside of path.map(bytesOf)) {
    if (last === 0) return false;
    if (node % 2 === 1 || node === last) {
      hash = nodeHash(beside, hash);
      while (node % 2 === 0 && node !== 0) [node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
    } else {
      hash = nodeHash(hash, beside);
    }

    [node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
  }

  return last === 0 && hash.equals(bytesOf(head.root));
}

// RFC 9162, 2.1.4.2.
function onlyGrew(old, head, path) {
  if (old.size === head.size) return path.length === 0 && old.root === head.root;
  let odd = old.size;
  while (odd % 2 === 0) odd /= 2;
  const [first, ...others] = [...(odd === 1 ? [old.root] : []), ...path].map(bytesOf);
  if (!first) return false;
  let [node, last] = [old.size - 1, head.size - 1];
  while (node % 2 === 1) [node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
  let [before, now] = [first, first];
  for (const beside of others) {
    if (last === 0) return false;
    if (node % 2 === 1 || node === last) {
      [before, now] = [nodeHash(beside, before), nodeHash(beside, now)];
      while (node % 2 === 0 && node !== 0) [node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
    } else {
      now = nodeHash(now, beside);
    }

    [node, last] = [Math.floor(node / 2), Math.floor(last / 2)];
  }

  return last === 0 && before.equals(bytesOf(old.root)) && now.equals(bytesOf(head.root));
}

// The opening: version 1, sixteen bytes of salt, then texts, each behind its length in two bytes.
function textsOf(opening) {
  const texts = [];
  for (let at = 17; at < opening.length;) {
    const end = at + 2 + opening.readUInt16BE(at);
    texts.push(opening.subarray(at + 2, end).toString("utf8"));
    at = end;
  }

  return texts;
}

const head = await get("/log/head");
if (!(await isSigned(head))) fail("The newest head is not signed by a key of this issuer.");
if (existsSync(file)) {
  const old = JSON.parse(readFileSync(file, "utf8"));
  if (!(await isSigned(old))) fail(`${file} is not signed by a key of this issuer.`);
  if (old.size > head.size) fail(`The log was cut: it had ${old.size} leaves and has ${head.size}.`);
  const { path } = old.size === 0 ? { path: [] } : await get(`/log/consistency?from=${old.size}&to=${head.size}`);
  if (old.size > 0 && !onlyGrew(old, head, path)) fail(`The log was changed before leaf ${old.size}.`);
}

if (serial) {
  const proofs = await get(`/log/proofs/${serial}`);
  if (!(await isSigned(proofs.head))) fail("The head of the proofs is not signed by a key of this issuer.");
  for (const leaf of proofs.leaves) {
    const opening = bytesOf(leaf.opening);
    const [opened, , , from, through, event, at] = textsOf(opening);
    if (opened !== proofs.serial) fail(`Leaf ${leaf.index} is about another paper.`);
    const isProven = leaf.path && isIncluded(Buffer.concat([Buffer.of(1), sha256(opening)]), leaf.index, proofs.head, leaf.path);
    if (leaf.path && !isProven) fail(`Leaf ${leaf.index} is not in the log.`);
    console.log(`leaf ${leaf.index}: ${event} ${at}, ${from} to ${through}${leaf.path ? "" : " (not under a signed head yet)"}`);
  }
}

writeFileSync(file, JSON.stringify(head));
console.log(`${head.size} leaves, signed ${new Date(head.timestamp).toISOString()}: good.`);
