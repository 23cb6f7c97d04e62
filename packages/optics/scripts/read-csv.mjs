import { readFileSync } from "node:fs";

/** Rows of tables/<name>.csv in their order, cells as text. */
export function readCsv(name) {
  const file = new URL(`../tables/${name}.csv`, import.meta.url);
  const [head, ...lines] = readFileSync(file, "utf8").trim().split(/\r?\n/);
  const keys = head.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    return Object.fromEntries(keys.map((key, i) => [key, cells[i] ?? ""]));
  });
}
