/** Sets of pieces as bits, the lowest for the first piece: up to 31 pieces. */
export type PieceSet = number;

export const NO_PIECE: PieceSet = 0;

export const onlyPiece = (place: number): PieceSet => 1 << place;

export const wholeSet = (pieces: number): PieceSet => 2 ** pieces - 1;

export const has = (set: PieceSet, place: number): boolean => (set & onlyPiece(place)) !== 0;

/** Whether all of `part` is in `set`. */
export const includes = (set: PieceSet, part: PieceSet): boolean => (part & ~set) === 0;

export function sizeOf(set: PieceSet): number {
  let size = 0;
  for (let left = set; left !== 0; left &= left - 1) size += 1;
  return size;
}

/** Places of the pieces in a set, in order. */
export function placesIn(set: PieceSet): number[] {
  const places: number[] = [];
  for (let place = 0; set >>> place !== 0; place += 1) if (has(set, place)) places.push(place);
  return places;
}
