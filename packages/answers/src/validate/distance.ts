/**
 * Edits between two words (Damerau 1964: insert, delete, replace, swap neighbours), in the restricted form that edits no place
 * twice (optimal string alignment). Who asks about many words bounds what each may take: only a strip along the diagonal is
 * worked out, since each step away from it is an edit (Ukkonen 1985, Algorithms for approximate string matching).
 * @param most edits that matter
 * @returns infinity for more than `most`
 */
export function distance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) > most) return Number.POSITIVE_INFINITY;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const first = Math.max(1, row - most);
    const end = Math.min(b.length, row + most);
    const current: number[] = new Array(b.length + 1).fill(Number.POSITIVE_INFINITY);
    current[0] = row;
    let least = row;
    for (let column = first; column <= end; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let edits = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        edits = Math.min(edits, at(beforeLast, column - 2) + 1);
      }
      current[column] = edits;
      least = Math.min(least, edits);
    }
    // A swap reaches back two rows, and that is one edit more than two rows differ by.
    if (least > most) return Number.POSITIVE_INFINITY;
    beforeLast = last;
    last = current;
  }
  const edits = at(last, b.length);
  return edits > most ? Number.POSITIVE_INFINITY : edits;
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}
