/**
 * Edits between two words (Damerau 1964: insert, delete, replace, swap neighbours), in the restricted form that edits no place
 * twice (optimal string alignment).
 */
export function distance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let edits = Math.min(
        at(last, column) + 1,
        at(current, column - 1) + 1,
        at(last, column - 1) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        edits = Math.min(edits, at(beforeLast, column - 2) + 1);
      }
      current.push(edits);
    }
    beforeLast = last;
    last = current;
  }
  return at(last, b.length);
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.POSITIVE_INFINITY;
}
