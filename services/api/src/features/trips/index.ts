import { toJson } from "@sunfathom/answers";
import type { Outcome, Task } from "../../compute/tasks.js";
import { operationIn, type Tongue, tongueOf } from "../../tongues.js";
import { calendarText } from "./calendar/calendar.js";
import { diveTimelines } from "./dive-timelines.js";
import { kitAdvice } from "./kit-advice.js";
import { lightWindows } from "./light-windows.js";
import { tripAdvice } from "./trip-advice.js";
import type { TripOperation } from "./trip-operation.js";

/** Everything that plans more than one scene at a time. */
export const tripOperations: readonly TripOperation[] = [lightWindows, kitAdvice, tripAdvice, diveTimelines];

/** Checks a body for an operation, in one language. */
export const prepareTrip = ({ prepare }: TripOperation, body: unknown, tongue: Tongue) =>
  prepare(body, {
    ...tongue,
    speaking: tongueOf,
    prepare: (calculation, scene) => operationIn(tongue, calculation).prepare(scene),
  });

/** A body that keeps its component, as what plans it would rather have it. */
export const readTrip = (name: string, body: unknown, tongue: Tongue) =>
  tripOperations.find((operation) => operation.name === name)?.read?.(body, tongue) ?? { request: body };

type Asked = Omit<Extract<Task, { kind: "trip" }>, "kind">;

/** An answer to a body as it came in. */
export function planTrip({ name, body, form, language }: Asked): Outcome {
  const found = tripOperations.find((operation) => operation.name === name);
  if (found === undefined) throw new Error(`There is no plan ${name}.`);
  const ready = prepareTrip(found, body, tongueOf(language));
  if (ready.status === "problem") return ready;
  if (form === "text/vtt" && ready.captions) {
    const said = ready.captions();
    return said.status === "problem" ? said : { status: "ok", bytes: bytesOf(said.text) };
  }
  const answered = ready.compute();
  if (answered.status === "problem") return answered;
  const { body: answer, calendar } = answered;
  const text = form === "text/calendar" && calendar !== undefined ? calendarText(calendar) : toJson(answer);
  return { status: "ok", bytes: bytesOf(text) };
}

/** A copy of its own, since it is given away. */
const bytesOf = (text: string): Uint8Array => Uint8Array.from(Buffer.from(text));
