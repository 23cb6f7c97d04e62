// What lengths in texts can be asked for in. Plain data, without zod.

/** Units of lengths in texts; fields are metric always. The first is taken where nobody asks for another. */
export const textUnits = ["metric", "imperial"] as const;

export type TextUnits = (typeof textUnits)[number];
