import { createHash } from "node:crypto";
import { checkpoint, toJson } from "@sunfathom/answers";
import type { Language } from "@sunfathom/contract";
import { costOfErrors, costOfForm } from "../../compute/cost.js";
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

function operationOf(name: string): TripOperation {
  const found = tripOperations.find((operation) => operation.name === name);
  if (found === undefined) throw new Error(`There is no plan ${name}.`);
  return found;
}

/** A scene of a plan, brought into its one form: defaults filled in, and looked for what is wrong. */
const scenePrepared = 1 / 4;

/**
 * Checks a body for an operation, in one language.
 * @returns with it what its scenes have cost to bring into their one form: `preparing`
 */
export function prepareTrip({ prepare }: TripOperation, body: unknown, tongue: Tongue) {
  let cost = 0;
  const ready = prepare(body, {
    ...tongue,
    speaking: tongueOf,
    prepare: (calculation, scene) => {
      checkpoint();
      const prepared = operationIn(tongue, calculation).prepare(scene);
      cost += scenePrepared + (prepared.status === "ready" ? costOfForm(prepared.scene) : 0);
      return prepared;
    },
  });
  const errors = ready.status === "problem" ? costOfErrors(ready.problem) : 0;
  return { ...ready, preparing: Math.ceil(cost + errors) };
}

/** Reads a body for the plan of that name, so that whoever answers needs to look at it no more. @param asked the language that it names */
export function readTrip(
  name: string,
  body: unknown,
  { tongue, asked }: { tongue: Tongue; asked: Language | undefined },
): Outcome {
  const { preparing, ...ready } = prepareTrip(operationOf(name), body, tongue);
  if (ready.status === "problem")
    return { status: "problem", problem: ready.problem, language: asked, cost: preparing };
  const { canonical, cost, read = body } = ready;
  const digest = createHash("sha256").update(canonical).digest("base64url");
  const trip = { name, bytes: bytesOf(toJson(read as object)), digest, cost };
  return { status: "trip", trip, language: asked, cost: preparing };
}

/** An answer to a body that has been read. */
export function planTrip({
  name,
  bytes,
  form,
  language,
}: Omit<Extract<Task, { kind: "trip" }>, "kind">): Outcome {
  const body: unknown = JSON.parse(new TextDecoder().decode(bytes));
  const ready = prepareTrip(operationOf(name), body, tongueOf(language));
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
