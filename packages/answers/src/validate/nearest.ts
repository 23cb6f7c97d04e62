/** A longer name is nobody's slip of the pen, and would take long to compare. */
const longestName = 64;
/** The beginning of a word says which word from so many letters on. */
const shortestBeginning = 3;

/**
 * The one of `names` that `wrong` was most likely meant to be: least edits (Damerau 1964: insert, delete, replace,
 * swap neighbours), no more than a third of the longer name; a name that `wrong` begins, by a whole word or by
 * three letters or more, counts as two edits. Case is not looked at. The first of equals; undefined where none is near.
 */
export function nearest(wrong: string, names: Iterable<string>): string | undefined {
  if (wrong.length > longestName) return undefined;
  const typed = wrong.toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const edits = begins(typed, name.toLowerCase()) ? 2 : distance(typed, name.toLowerCase());
    const allowed = Math.max(2, Math.floor(Math.max(typed.length, name.length) / 3));
    if (edits <= allowed && edits < least) {
      best = name;
      least = edits;
    }
  }
  return best;
}

function begins(typed: string, name: string): boolean {
  if (typed === name) return false;
  return typed.length >= shortestBeginning ? name.startsWith(typed) : name.startsWith(`${typed}_`);
}

/** Edits between two words, in the restricted form that edits no place twice (optimal string alignment). */
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
