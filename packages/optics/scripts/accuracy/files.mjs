// Writes a page with its plots, or tells which of its files no longer are what the script gives.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";

const NUMBER = /\d+(?:\.\d+)?(?:e[+-]?\d+)?/g;

/** One unit in the last place that a number shows: another engine may round a tie the other way. */
function lastPlace(text) {
  const [mantissa, exponent = "0"] = text.split("e");
  return 10 ** (Number(exponent) - (mantissa.split(".")[1]?.length ?? 0));
}

/** Whether two texts agree, numbers to one unit in the last place of the coarser of the two. */
export function sameText(a, b) {
  if (a === b) return true;
  if (a.replace(NUMBER, "0") !== b.replace(NUMBER, "0")) return false;
  const numbers = b.match(NUMBER) ?? [];
  return (a.match(NUMBER) ?? []).every((text, i) => {
    const unit = Math.max(lastPlace(text), lastPlace(numbers[i]));
    return Math.abs(Number(text) - Number(numbers[i])) <= 1.001 * unit;
  });
}

/** Names of the files in a folder that are missing, different, or there without being written. @param {URL} folder */
export function staleFiles(folder, files) {
  const there = existsSync(folder) ? readdirSync(folder) : [];
  const changed = Object.entries(files)
    .filter(
      ([name, text]) =>
        !there.includes(name) ||
        !sameText(readFileSync(new URL(name, folder), "utf8").replaceAll("\r\n", "\n"), text),
    )
    .map(([name]) => name);
  return [...changed, ...there.filter((name) => !(name in files))];
}

/** Writes the files, or with `--check` writes nothing and ends the process with 1 when one is stale. */
export function writeOrCheck(folder, files) {
  if (!process.argv.includes("--check")) {
    mkdirSync(folder, { recursive: true });
    for (const [name, text] of Object.entries(files)) writeFileSync(new URL(name, folder), text);
    console.log(`${Object.keys(files).length} files written`);
    return;
  }
  const stale = staleFiles(folder, files);
  for (const name of stale) console.error(`${name} is not what the script gives`);
  if (stale.length > 0) process.exit(1);
  console.log(`${Object.keys(files).length} files match`);
}
