import { createHash } from "node:crypto";
import { build } from "@sunfathom/answers";
import type { FieldError } from "@sunfathom/contract";
import { gradeOf } from "@sunfathom/pictures";
import { costOfCalculation } from "../../compute/cost.js";
import { operations } from "../../operations.js";
import { operationIn, type Tongue } from "../../tongues.js";
import type { SheetOperation } from "./sheet-operation.js";

/** The chart at up to 80 depths, to find where the grade holds, in the light of up to six lamps. */
const holding = 20;
const lamp = 6;

const recovery = operations.find(({ name }) => name === "colour-recovery");
if (recovery === undefined) throw new Error("There is no calculation colour-recovery.");

/** A color decision list holds no matrix: what was asked for does not fit into what it is to come in. */
function noMatrix(body: unknown, { problems }: Tongue): FieldError[] {
  const isMatched =
    typeof body === "object" && body !== null && "finish" in body && body.finish === "matched";
  if (!isMatched) return [];
  const options = ["in_camera", "basic_edit"];
  const { message, allowed = options.join(", ") } = problems.checks.not_an_option({ options });
  return [{ pointer: "/finish", code: "not_an_option", message, allowed }];
}

const lampsOf = ({ lamps = [] }: { lamps?: readonly unknown[] }): number => lamps.length;

/** A grade to start from, for an editing program. */
export const grades: SheetOperation = {
  name: "grades",
  operationId: "renderGrade",
  summary: "A grade to start from, for an editing program",
  description:
    "What `matched` or `basic_edit` (`finish`) does to footage from the middle of the filmed depths, shot through the filter that the scene has on the lens, as a file: in the Common LUT Format (SMPTE ST 2136-1), from the code values of the recording to those of sRGB, or as an ASC CDL for linear light, which `basic_edit` alone fits into. The file says what goes in and comes out, between which depths it holds, and how much red was recorded: red that was not recorded stays lost. It is a start for the eye to go on from, and an editor may need it converted. Any other `finish` than `matched` gives the `basic_edit`.",
  look: "GradeLook",
  types: { clf: "application/xml", cdl: "text/xml" },
  makers: { clf: "", cdl: "" },
  request: recovery.request,
  reader: { operation: "colour-recovery" },
  examples: Object.fromEntries(
    recovery.examples.map(({ name, summary, scene }) => [name, { summary, value: scene }]),
  ),
  prepare: (tongue, body, format) => {
    const found = format === "cdl" ? noMatrix(body, tongue) : [];
    const ready = operationIn(tongue, "colour-recovery").prepare(body, found);
    if (ready.status === "problem") return ready;
    const canonical = `${ready.units} ${ready.canonical}`;
    return {
      status: "ready",
      canonical,
      scene: ready.scene,
      // What it costs to know water and sun, and no more of any calculation.
      cost: costOfCalculation("attenuation", ready.scene) + holding + lamp * lampsOf(ready.scene),
      make: () => {
        try {
          // The calculation whose kind of scene it is has checked it, and brought it into the planner's form.
          const own = ready.scene as Parameters<typeof gradeOf>[0];
          const { grade: texts, caution } = tongue.pictures;
          const saying = { texts, caution, units: ready.units };
          const id = `sunfathom-${createHash("sha256").update(build).update(canonical).digest("hex").slice(0, 16)}`;
          const text = gradeOf(own, { format, id }, saying);
          return { status: "ok", bytes: Uint8Array.from(Buffer.from(text)) };
        } catch (error) {
          return ready.refuse(error);
        }
      },
    };
  },
};
