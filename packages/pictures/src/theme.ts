import type { Light } from "@sunfathom/planner";

export const themes = ["light", "dark", "print"] as const;
export type Theme = (typeof themes)[number];

/** Colours of what is drawn. Texts and the lines of curves have a contrast of at least 4.5 to 1 against the ground. */
export interface Colours {
  ground: string;
  text: string;
  /** Of what matters less, still readable. */
  quiet: string;
  grid: string;
  /** Of what is pointed out. */
  accent: string;
  lights: Readonly<Record<Light, string>>;
}

export const COLOURS: Readonly<Record<Theme, Colours>> = {
  light: {
    ground: "#ffffff",
    text: "#16202a",
    quiet: "#4a5763",
    grid: "#d8dee4",
    accent: "#7a4a00",
    lights: { red: "#b3201a", green: "#146c37", blue: "#1b58b0", eye: "#3d3d3d" },
  },
  dark: {
    ground: "#0f1a24",
    text: "#eef3f7",
    quiet: "#b3c0cc",
    grid: "#2c3c4a",
    accent: "#ffc46b",
    lights: { red: "#ff8a80", green: "#77d89a", blue: "#8dbbff", eye: "#f1ead6" },
  },
  // On a black-and-white printer, too: dashes tell curves apart, and greys are few.
  print: {
    ground: "#ffffff",
    text: "#000000",
    quiet: "#333333",
    grid: "#cccccc",
    accent: "#000000",
    lights: { red: "#a31515", green: "#0f5a2c", blue: "#17489a", eye: "#000000" },
  },
};

/** Dashes of curves, beside their colours: nothing is told by colour alone. Relative to the width of a line. */
export const DASHES: Readonly<Record<Light, readonly number[]>> = {
  red: [],
  green: [5, 2],
  blue: [1.2, 1.8],
  eye: [6, 1.8, 1.2, 1.8],
};
