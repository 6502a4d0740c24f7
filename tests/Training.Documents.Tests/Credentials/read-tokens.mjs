// The module of the check page on a table of tokens: { module, trust, loggedAt, cases: [{ token, now }] } in, verdicts out.
import { text } from "node:stream/consumers";

const { module, trust, loggedAt, cases } = JSON.parse(await text(process.stdin));
const { readToken } = await import(`data:text/javascript,${encodeURIComponent(module)}`);

const verdicts = [];
for (const { token, now, listTokens } of cases) {
  verdicts.push(await readToken(token, { ...trust, listTokens, loggedAt: (serial) => loggedAt[serial] ?? null }, now));
}

process.stdout.write(JSON.stringify(verdicts));
