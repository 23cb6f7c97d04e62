/**
 * The point between `low` and `high` up to which `holds` is true, to within `width`. True below it and false above: where it is
 * true or false throughout, an end is returned.
 */
export function bisect(holds: (x: number) => boolean, low: number, high: number, width: number): number {
  let from = low;
  let to = high;
  while (to - from > width) {
    const middle = (from + to) / 2;
    if (holds(middle)) from = middle;
    else to = middle;
  }
  return from;
}
