/** Languages that texts are written in, by their tags (RFC 5646). */
export const languages = ["en"] as const;

export type Language = (typeof languages)[number];
