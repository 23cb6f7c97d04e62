import { ConnectionError } from "../core/errors.js";
import type { Made, Seldom } from "./rest.js";

/** What this scene needs is not here yet. The client waits for it, and begins again. */
export class NotHereYet extends Error {}

let here: Seldom | undefined;
/** Whether anything here may ever ask for it. */
let isWanted = false;

/** Loads what only some scenes need. @throws ConnectionError where it cannot be loaded */
export async function bringRest(): Promise<void> {
  if (!isWanted) return;
  const rest = await import("./rest.js").catch((cause: unknown) => {
    throw new ConnectionError(
      "What this scene needs is not here: wait for ready() while there is a network.",
      { cause },
    );
  });
  here = rest.made;
}

function found(name: string): Seldom[string] | undefined {
  if (here === undefined) throw new NotHereYet();
  return here[name];
}

/** What the packer puts in the place of a function that is loaded when it is first called. */
export function seldom(name: string): Made {
  isWanted = true;
  return (...given) => (found(name) as Made)(...given);
}

/** The same for a catalogue of functions. @param codes of all that are in it */
export function seldomEach(name: string, codes: readonly string[]): Readonly<Record<string, Made>> {
  isWanted = true;
  const of =
    (code: string): Made =>
    (...given) =>
      (found(name) as Record<string, Made>)[code]?.(...given);
  return Object.fromEntries(codes.map((code) => [code, of(code)]));
}
