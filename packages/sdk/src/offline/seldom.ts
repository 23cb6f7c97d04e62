import { ConnectionError } from "../core/errors.js";
import type { Made, Seldom } from "./rest.js";

/** What this scene needs is not here yet. The client waits for it, and begins again. */
export class NotHereYet extends Error {}

type Load = () => Promise<{ made: Seldom }>;
const rest: Load = () => import("./rest.js");

/** Who loads what anything here may ever ask for. */
const wanted = new Set<Load>();
const here = new Map<string, Seldom[string]>();

/** Loads what only some scenes need. @throws ConnectionError where it cannot be loaded */
export async function bringRest(): Promise<void> {
  const all = await Promise.all([...wanted].map((load) => load())).catch((cause: unknown) => {
    throw new ConnectionError(
      "What this scene needs is not here: wait for ready() while there is a network.",
      { cause },
    );
  });
  for (const { made } of all) for (const [name, one] of Object.entries(made)) here.set(name, one);
}

function found(name: string): Seldom[string] {
  const made = here.get(name);
  if (made === undefined) throw new NotHereYet();
  return made;
}

/** What the packer puts in the place of a function that is loaded when it is first called. */
export function seldom(name: string): Made {
  wanted.add(rest);
  return (...given) => (found(name) as Made)(...given);
}

/** The same for a catalogue of functions. @param codes of all that are in it */
export function seldomEach(
  name: string,
  codes: readonly string[],
  load = rest,
): Readonly<Record<string, Made>> {
  wanted.add(load);
  const of =
    (code: string): Made =>
    (...given) =>
      (found(name) as Record<string, Made>)[code]?.(...given);
  return Object.fromEntries(codes.map((code) => [code, of(code)]));
}
