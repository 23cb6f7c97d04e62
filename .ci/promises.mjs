// Holds the description to what it has promised: `openapi/promises.json` keeps that, and `npm run generate` adds what is new to it. A
// change that breaks one is refused here. With `--write` the kept promises are written anew, if none is broken; with
// `--break` also if some are, which is for a new major version, or for what nobody can have relied on, and stands in the changelog.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { broken } from "./promises/broken.mjs";
import { promised } from "./promises/promised.mjs";

const home = new URL("../openapi/", import.meta.url);
const file = new URL("promises.json", home);
const now = promised(JSON.parse(readFileSync(new URL("openapi.json", home), "utf8")));
const text = `${inLines(now)}\n`;
const [asked] = process.argv.slice(2);

const kept = existsSync(file) ? readFileSync(file, "utf8") : text;
const faults = asked === "--break" ? [] : broken(JSON.parse(kept), now);
if (faults.length > 0) {
  console.error(`[promises] ${faults.length} broken, see openapi/CHANGELOG.md for what may change:`);
  for (const fault of faults) console.error(`  ${fault}`);
  process.exit(1);
}
if (asked === "--write" || asked === "--break") writeFileSync(file, text);
else if (text !== kept) {
  console.error("[promises] There are new ones: npm run generate.");
  process.exit(1);
}
console.log(`[promises] ${Object.keys(now.operations).length} operations keep theirs`);

/** JSON in which whatever fits stands on a line, so that a change of one promise is a change of one line. @param {any} value @param {string} margin @returns {string} */
function inLines(value, margin = "") {
  const whole = JSON.stringify(value);
  if (whole.length <= 120 || typeof value !== "object") return whole;
  const further = `${margin} `;
  const lines = Array.isArray(value)
    ? value.map((one) => inLines(one, further))
    : Object.entries(value).map(([name, one]) => `${JSON.stringify(name)}: ${inLines(one, further)}`);
  const [open, close] = Array.isArray(value) ? "[]" : "{}";
  return `${open}\n${lines.map((line) => `${further}${line}`).join(",\n")}\n${margin}${close}`;
}
