/** The published tables of packages/optics/tables, read for tests; some of them serve tests alone. */
import { readFileSync } from "node:fs";

export type Row = Readonly<Record<string, string>>;

export const TABLES = new URL("../../packages/optics/tables/", import.meta.url);

/** Rows of a table in its order. @param name file name without its ending. */
export function readTable(name: string): Row[] {
  const [head, ...lines] = readFileSync(new URL(`${name}.csv`, TABLES), "utf8")
    .trim()
    .split(/\r?\n/);
  const keys = head.split(",");
  return lines.map((line) => {
    const cells = line.split(",");
    if (cells.length !== keys.length) throw new Error(`${name}: ${line}`);
    return Object.fromEntries(keys.map((key, i) => [key, cells[i]]));
  });
}

/** A number in a row. @throws where the cell is missing or empty. */
export function numberIn(row: Row, key: string): number {
  const cell = row[key];
  if (cell === undefined || cell === "" || Number.isNaN(Number(cell))) {
    throw new Error(`no number under ${key} in ${JSON.stringify(row)}`);
  }
  return Number(cell);
}

/** One column as numbers. */
export const column = (rows: readonly Row[], key: string): number[] => rows.map((row) => numberIn(row, key));

/** Integral of a column over wavelength by the trapezoid rule on the table's own points. */
export function trapezoid(x: readonly number[], y: readonly number[]): number {
  let sum = 0;
  for (let i = 1; i < x.length; i++) sum += ((y[i - 1] + y[i]) / 2) * (x[i] - x[i - 1]);
  return sum;
}
