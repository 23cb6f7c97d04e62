import type { LinearRgb } from "@sunfathom/planner";
import { encode } from "fast-png";
import { bytesOf } from "../colour/srgb.js";
import { type Element, el } from "../svg/element.js";

/** Of every engine; its type comes with those of a browser alone. */
declare const btoa: (binary: string) => string;

interface Squares {
  /** Row by row. */
  colours: readonly LinearRgb[];
  columns: number;
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Pixels along a square: a renderer that smooths an image leaves most of it sharp. */
const ENLARGED = 3;

const repeated = <T>(items: readonly T[]): T[] =>
  items.flatMap((item) => Array.from({ length: ENLARGED }, () => item));

/** Many small squares as one image within the picture, their edges kept sharp. */
export function squaresAt({ colours, columns, ...place }: Squares): Element {
  const bytes = colours.map(bytesOf);
  const rows = Array.from({ length: colours.length / columns }, (_, row) =>
    repeated(bytes.slice(row * columns, (row + 1) * columns)).flat(),
  );
  const png = encode({
    width: ENLARGED * columns,
    height: ENLARGED * rows.length,
    data: Uint8Array.from(repeated(rows).flat()),
    channels: 3,
    depth: 8,
  });
  return el("image", {
    ...place,
    preserveAspectRatio: "none",
    "image-rendering": "optimizeSpeed",
    href: `data:image/png;base64,${btoa(String.fromCharCode(...png))}`,
  });
}
