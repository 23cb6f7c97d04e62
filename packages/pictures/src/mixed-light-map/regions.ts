import type { MixedLightVerdict } from "@sunfathom/planner";

type Verdicts = readonly (readonly MixedLightVerdict[])[];

interface Run {
  verdict: MixedLightVerdict;
  row: number;
  /** Columns from the first up to, and without, the last. */
  from: number;
  to: number;
}

/** Stretches of one verdict, row by row: as few areas as they make. */
export function runsOf(verdicts: Verdicts): Run[] {
  return verdicts.flatMap((columns, row) => {
    const runs: Run[] = [];
    for (const [column, verdict] of columns.entries()) {
      const last = runs[runs.length - 1];
      if (last?.verdict === verdict) last.to = column + 1;
      else runs.push({ verdict, row, from: column, to: column + 1 });
    }
    return runs;
  });
}

interface Cells {
  /** Size of a cell, px. */
  column: number;
  row: number;
  /** A column that something else stands in. */
  avoid: number;
}

/** For each verdict the cell that is farthest from all others, from the edges and from `avoid`: where its letter stands. */
export function deepestInside(
  verdicts: Verdicts,
  { column: width, row: height, avoid }: Cells,
): { verdict: MixedLightVerdict; row: number; column: number }[] {
  const cells = verdicts.flatMap((columns, row) =>
    columns.map((verdict, column) => ({ verdict, row, column })),
  );
  const rows = verdicts.length;
  const columns = verdicts[0]?.length ?? 0;
  const found = new Map<MixedLightVerdict, { room: number; row: number; column: number }>();
  for (const { verdict, row, column } of cells) {
    const toEdges = Math.min(
      (column + 0.5) * width,
      (columns - column - 0.5) * width,
      (row + 0.5) * height,
      (rows - row - 0.5) * height,
      Math.abs(column + 0.5 - avoid) * width,
    );
    const best = found.get(verdict)?.room ?? -1;
    if (toEdges <= best) continue;
    const toOthers = cells.reduce(
      (least, other) =>
        other.verdict === verdict
          ? least
          : Math.min(least, Math.hypot((other.column - column) * width, (other.row - row) * height)),
      Number.POSITIVE_INFINITY,
    );
    const room = Math.min(toEdges, toOthers);
    if (room > best) found.set(verdict, { room, row, column });
  }
  return [...found].map(([verdict, { row, column }]) => ({ verdict, row, column }));
}
