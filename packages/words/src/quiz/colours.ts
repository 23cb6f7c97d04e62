/** Colours that questions have filters of, on the lens or on lights. */
export type FilterColour = "red" | "magenta" | "blue" | "green";
