/** Cast on a grey at one depth that a balance made at another leaves and a new one would take out, in CIEDE2000. */
export type ShiftBetween = (balanced_m: number, seen_m: number) => number;
