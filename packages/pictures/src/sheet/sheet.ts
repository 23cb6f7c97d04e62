/** A sheet of paper with what is drawn on it, before it becomes an SVG or a PDF. Lengths are points, 72 to the inch, y downwards. */
import type { Weight } from "../text/measure.js";

export interface SheetText {
  kind: "text";
  text: string;
  /** Left end and baseline. */
  x: number;
  y: number;
  size: number;
  weight: Weight;
  fill: string;
}

/** What a line is drawn with. */
export interface Pen {
  stroke: string;
  stroke_width: number;
  /** Lengths of dashes and gaps, in turn; unbroken where it is left out. */
  dashes?: readonly number[];
}

interface SheetRectangle {
  kind: "rectangle";
  x: number;
  y: number;
  width: number;
  height: number;
  fill?: string;
  pen?: Pen;
}

export interface SheetLine {
  kind: "line";
  from: readonly [x: number, y: number];
  to: readonly [x: number, y: number];
  pen: Pen;
}

export type Mark = SheetText | SheetRectangle | SheetLine;

export interface Sheet {
  width: number;
  height: number;
  title: string;
  description: string;
  marks: readonly Mark[];
}

const POINTS_PER_MM = 72 / 25.4;
export const pointsOf = (mm: number): number => mm * POINTS_PER_MM;
export const mmOf = (points: number): number => points / POINTS_PER_MM;
