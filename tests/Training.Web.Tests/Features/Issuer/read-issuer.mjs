// A stranger with an ordinary JOSE library at the doors of a running site: { address, now, tokens, badge, credential, places } in.
import { text } from "node:stream/consumers";
import * as jose from "jose";
import { decodeList } from "@digitalbazaar/vc-bitstring-status-list";

const { address, now, tokens, badge, credential, places } = JSON.parse(await text(process.stdin));
const currentDate = new Date(now);
const at = (path) => new URL(path, address);
const keySet = jose.createRemoteJWKSet(at("/.well-known/jwks.json"));
const said = async (promise) => promise.then(({ payload }) => payload.jti ?? payload.id, (error) => error.code);

const answer = { tokens: [], lists: {} };
for (const token of tokens) answer.tokens.push(await said(jose.jwtVerify(token, keySet, { typ: "gate+jwt", algorithms: ["ES256"], currentDate })));

// A badge names its key by an address, which here leads to the running site in place of its public one.
const byPage = async (header) => jose.importJWK(await (await fetch(at(new URL(header.kid).pathname))).json(), header.alg);
answer.badge = badge ? await said(jose.jwtVerify(badge, byPage, { typ: "JWT", algorithms: ["RS256"], currentDate })) : null;

const did = await (await fetch(at("/.well-known/did.json"))).json();
const byMethod = async (header) => {
  const method = did.verificationMethod.find((one) => one.id === header.kid && did.assertionMethod.includes(one.id));
  if (!method) throw Object.assign(new Error("asserts nothing"), { code: "NO_METHOD" });
  return jose.importJWK(method.publicKeyJwk, header.alg);
};
answer.did = did.id;
answer.credential = credential ? await said(jose.jwtVerify(credential, byMethod, { typ: "vc+jwt", algorithms: ["ES256"], currentDate })) : null;

for (const purpose of ["revocation", "suspension"]) {
  const response = await fetch(at(`/status/${purpose}`));
  const { payload } = await jose.jwtVerify(await response.text(), byMethod, { typ: "vc+jwt", algorithms: ["ES256"] });
  const list = await decodeList({ encodedList: payload.credentialSubject.encodedList });
  answer.lists[purpose] = {
    id: payload.id,
    type: response.headers.get("content-type"),
    validFrom: payload.validFrom,
    validUntil: payload.validUntil,
    length: list.length,
    set: places.filter((place) => list.getStatus(place)),
  };
}

process.stdout.write(JSON.stringify(answer));
