// Writes docs/generated/answers.json: what the service answers to the examples of its own description. Run by `npm run generate`. By a
// clock that stands still and dice that always fall alike, so that it writes the same each time. Into another file where one is named.
import crypto, { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import { pathToFileURL } from "node:url";
import { createApp } from "../app.js";
import { defaultLimits } from "../config/limits.js";
import { answersFile } from "./answers-kept.js";
import { realAnswers } from "./real-answers.js";

const standing_ms = Date.UTC(2026, 10, 2, 9);
Date.now = () => standing_ms;

let thrown = 0;
const fall = (bytes: number) => {
  thrown += 1;
  return createHash("shake256", { outputLength: bytes }).update(`throw ${thrown}`).digest();
};
Object.assign(crypto, { randomBytes: fall });
Object.assign(globalThis.crypto, {
  getRandomValues: (array: Uint8Array) => {
    array.set(fall(array.length));
    return array;
  },
});
syncBuiltinESMExports();

const key = createHash("sha256").update("examples alone").digest();
const app = await createApp({
  limits: { ...defaultLimits, costPerWindow: 0 },
  quiz: {
    keyring: { current: "example", keys: { example: new Uint8Array(key) } },
    tokenLifetime_s: 86_400,
    instructorKey: undefined,
  },
});
await app.ready();
const answers = await realAnswers(app);
const [, , elsewhere] = process.argv;
const target = elsewhere === undefined ? answersFile : pathToFileURL(elsewhere);
mkdirSync(new URL("./", target), { recursive: true });
writeFileSync(target, `${JSON.stringify(answers, null, 1)}\n`);
await app.close();
console.log(`Wrote ${target.pathname}`);
