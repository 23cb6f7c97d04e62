/** Languages that texts are written in, by their tags (RFC 5646). */
export const languages = ["en"] as const;

export type Language = (typeof languages)[number];

export { outsideLight } from "./en/problems/outside-light.js";
export { outsideMeanings } from "./en/problems/outside-meanings.js";
export { outsideMounting } from "./en/problems/outside-mounting.js";
export { problemPage } from "./en/problems/page.js";
export type { FieldText, OutsideText, Texts } from "./problems/texts.js";
