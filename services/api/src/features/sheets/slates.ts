import { sheetSvg, slateOf } from "@sunfathom/pictures";
import { costOfCalculation, costOfPng } from "../../compute/cost.js";
import { pngMaker, pngOf } from "../../drawing/png.js";
import { operations } from "../../operations.js";
import { operationIn } from "../../tongues.js";
import { pdfMaker, pdfOf, setting } from "./pdf.js";
import type { SheetOperation } from "./sheet-operation.js";

/** A5 at 200 dots to the inch. */
const WIDTH_PX = 1654;
const HEIGHT_PX = 1165;
/** Drawing, and putting it into a file. */
const drawing = 15;
const files: Readonly<Record<string, number>> = { pdf: setting, png: costOfPng(WIDTH_PX, HEIGHT_PX) };

const plan = operations.find(({ name }) => name === "dive-advice");
if (plan === undefined) throw new Error("There is no calculation dive-advice.");

/** The plan of a dive on one side of A5, to take along. */
export const slates: SheetOperation = {
  name: "slates",
  operationId: "renderSlate",
  summary: "A slate of the plan, to print and take along",
  description:
    "The plan of `dive-advice` on one side of A5, landscape, in letters of 14 pt and more, black on white with one colour: three numbers to remember; what to do before the dive, at the start, on the way down, on the way up and afterwards; and every caution, ascent and safety stop first. What does not fit is left out by its rank, what the plan on land says as well before what is looked up under water, and the slate counts it. No caution and none of the three numbers is left out. Print it on waterproof paper or laminate it.",
  look: "SlateLook",
  types: { pdf: "application/pdf", svg: "image/svg+xml", png: "image/png" },
  makers: { pdf: pdfMaker, svg: "", png: pngMaker },
  request: plan.request,
  reader: { operation: "dive-advice" },
  examples: Object.fromEntries(
    plan.examples.map(({ name, summary, scene }) => [name, { summary, value: scene }]),
  ),
  prepare: (tongue, body, format) => {
    const ready = operationIn(tongue, "dive-advice").prepare(body);
    if (ready.status === "problem") return ready;
    return {
      status: "ready",
      canonical: `${ready.units} ${ready.canonical}`,
      scene: ready.scene,
      cost: Math.ceil(costOfCalculation("dive-advice", ready.scene) + drawing + (files[format] ?? 0)),
      make: () => {
        try {
          // The calculation whose kind of scene it is has checked it, and brought it into the planner's form.
          const sheet = slateOf(
            ready.scene as Parameters<typeof slateOf>[0],
            tongue.pictures.slate,
            ready.units,
          );
          const bytes =
            format === "pdf"
              ? pdfOf(sheet, tongue.language)
              : format === "png"
                ? pngOf(sheetSvg(sheet), WIDTH_PX)
                : Buffer.from(sheetSvg(sheet));
          return { status: "ok", bytes: Uint8Array.from(bytes) };
        } catch (error) {
          return ready.refuse(error);
        }
      },
    };
  },
};
