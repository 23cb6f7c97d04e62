import type { Outcome, Task } from "../../compute/tasks.js";
import { tongueOf } from "../../tongues.js";
import { cuttingTemplates } from "./cutting-templates.js";
import { grades } from "./grades.js";
import type { SheetOperation } from "./sheet-operation.js";
import { slates } from "./slates.js";

/** Everything that makes a file to print or to load. */
export const sheetOperations: readonly SheetOperation[] = [slates, cuttingTemplates, grades];

/** A file for a body as it came in. */
export function sheetOf({
  name,
  body,
  format,
  language,
}: Omit<Extract<Task, { kind: "sheet" }>, "kind">): Outcome {
  const found = sheetOperations.find((operation) => operation.name === name);
  if (found === undefined) throw new Error(`There is no sheet ${name}.`);
  const ready = found.prepare(tongueOf(language), body, format);
  return ready.status === "problem" ? ready : ready.make();
}
