/** A share as finely as a sentence needs it: to five percent; 0 where it is hardly any. */
export const roughly = (percent: number): number => Math.round(percent / 5) * 5;
