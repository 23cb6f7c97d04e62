import { readFileSync } from "node:fs";

const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));

/** What `npm start` tells Node.js itself: sizes and habits of its memory. Why, test/bench/README.md says. */
export const startFlags = manifest.scripts.start
  .split(" ")
  .filter((/** @type {string} */ word) => word.startsWith("--"));
