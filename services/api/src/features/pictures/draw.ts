import { type Picture, pictures } from "@sunfathom/pictures";
import type { Outcome, Task } from "../../compute/tasks.js";
import { pngOf } from "../../drawing/png.js";
import { operations } from "../../operations.js";
import { operationIn, tongueOf } from "../../tongues.js";

/** A picture with the calculation whose scenes it takes. */
export const drawable = pictures.map((picture) => {
  const operation = operations.find(({ name }) => name === picture.of);
  if (operation === undefined) throw new Error(`There is no calculation ${picture.of}.`);
  return { picture, operation, path: `/v1/pictures/${picture.name}` };
});
export type Drawable = (typeof drawable)[number];

/** A picture of a scene as it came in. */
export function draw({
  name,
  scene,
  look,
  language,
}: Omit<Extract<Task, { kind: "picture" }>, "kind">): Outcome {
  const found = drawable.find(({ picture }) => picture.name === name);
  if (found === undefined) throw new Error(`There is no picture ${name}.`);
  const { format, width_px, theme } = look;
  const tongue = tongueOf(language);
  const ready = operationIn(tongue, found.operation.name).prepare(scene);
  if (ready.status === "problem") return ready;
  try {
    // The calculation whose kind of scene it is has checked it, and brought it into the planner's form.
    const own = ready.scene as Parameters<Picture["drawing"]>[0];
    const svg = found.picture.drawing(own)({ width_px, theme, units: ready.units }, tongue.pictures);
    return { status: "ok", bytes: Uint8Array.from(format === "png" ? pngOf(svg) : Buffer.from(svg)) };
  } catch (error) {
    return ready.refuse(error);
  }
}
