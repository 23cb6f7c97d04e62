// What texts can be asked for in. Plain data, without zod.

/** Languages that answers and problems are written in, by their tags (RFC 5646). The first is taken where nobody asks for another. */
export const languages = ["en", "de", "es", "fr"] as const;

export type Language = (typeof languages)[number];
