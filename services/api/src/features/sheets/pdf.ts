import type { Mark, Pen, Sheet } from "@sunfathom/pictures";
import PDFDocument from "pdfkit";
import { fontFiles } from "../../drawing/png.js";
import { versionOf } from "../../drawing/version-of.js";

/** What else than the sheet decides the bytes of a PDF. */
export const pdfMaker = versionOf("pdfkit");

/** What a PDF costs, whatever is on it: its two fonts are cut to the letters that it has. */
export const setting = 250;

/** The same for all: a sheet made twice has the same bytes. */
const MADE = new Date(0);

type Pdf = InstanceType<typeof PDFDocument>;

function draw(pdf: Pdf, mark: Mark): void {
  if (mark.kind === "text") {
    pdf
      .font(mark.weight)
      .fontSize(mark.size)
      .fillColor(mark.fill)
      .text(mark.text, mark.x, mark.y, { lineBreak: false, baseline: "alphabetic" });
    return;
  }
  if (mark.kind === "line") {
    const [[x1, y1], [x2, y2]] = [mark.from, mark.to];
    pdf.moveTo(x1, y1).lineTo(x2, y2);
    stroke(pdf, mark.pen);
    return;
  }
  const { x, y, width, height, fill, pen } = mark;
  if (fill !== undefined) pdf.rect(x, y, width, height).fill(fill);
  if (pen !== undefined) stroke(pdf.rect(x, y, width, height), pen);
}

function stroke(pdf: Pdf, { stroke: colour, stroke_width, dashes }: Pen): void {
  if (dashes === undefined) pdf.undash();
  else pdf.dash([...dashes] as never, {});
  pdf.lineWidth(stroke_width).stroke(colour);
}

/** A sheet as a PDF of one page, as large as it is on paper, its texts as text. */
export function pdfOf({ width, height, title, description, marks }: Sheet, language: string): Uint8Array {
  const pdf = new PDFDocument({
    size: [width, height],
    margin: 0,
    lang: language,
    displayTitle: true,
    info: {
      Title: title,
      Subject: description,
      Producer: "Sunfathom",
      Creator: "Sunfathom",
      CreationDate: MADE,
    },
  });
  const [regular, semibold] = fontFiles;
  pdf.registerFont("regular", regular).registerFont("semibold", semibold);
  for (const mark of marks) draw(pdf, mark);
  pdf.end();
  const chunks: Buffer[] = [];
  for (let chunk = pdf.read(); chunk !== null; chunk = pdf.read()) chunks.push(chunk);
  return Buffer.concat(chunks);
}
