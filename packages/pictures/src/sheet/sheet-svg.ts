import { type Element, el, write } from "../svg/element.js";
import { FONT } from "../svg/page.js";
import { type Mark, mmOf, type Pen, type Sheet } from "./sheet.js";

/** Finer than the tenths of a pixel of a picture: a sheet is measured with a ruler. */
const fine = (value: number): string => String(Math.round(value * 1000) / 1000);
const drawnBy = ({ stroke, stroke_width, dashes }: Pen) => ({
  stroke,
  "stroke-width": fine(stroke_width),
  ...(dashes ? { "stroke-dasharray": dashes.map(fine).join(" ") } : {}),
});

function elementOf(mark: Mark): Element {
  if (mark.kind === "text") {
    const { text, x, y, size, weight, fill } = mark;
    return el(
      "text",
      {
        x: fine(x),
        y: fine(y),
        "font-size": fine(size),
        fill,
        ...(weight === "semibold" ? { "font-weight": 600 } : {}),
      },
      text,
    );
  }
  if (mark.kind === "line") {
    const [[x1, y1], [x2, y2]] = [mark.from, mark.to];
    return el("line", { x1: fine(x1), y1: fine(y1), x2: fine(x2), y2: fine(y2), ...drawnBy(mark.pen) });
  }
  const { x, y, width, height, fill = "none", pen } = mark;
  return el("rect", {
    x: fine(x),
    y: fine(y),
    width: fine(width),
    height: fine(height),
    fill,
    ...(pen ? drawnBy(pen) : {}),
  });
}

/** A sheet as a complete SVG document, as large as it is on paper. */
export function sheetSvg({ width, height, title, description, marks }: Sheet): string {
  return write(
    el(
      "svg",
      {
        xmlns: "http://www.w3.org/2000/svg",
        viewBox: `0 0 ${fine(width)} ${fine(height)}`,
        width: `${fine(mmOf(width))}mm`,
        height: `${fine(mmOf(height))}mm`,
        role: "img",
        "font-family": FONT,
      },
      el("title", {}, title),
      el("desc", {}, description),
      el("rect", { width: fine(width), height: fine(height), fill: "#ffffff" }),
      ...marks.map(elementOf),
    ),
  );
}
