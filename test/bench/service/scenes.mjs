import { seeded } from "../statistics.mjs";
import { operations } from "./operations.mjs";

/** Bodies in turn: more than any part of the service remembers of one scene when it meets it again. */
const BODIES = 512;

/**
 * Requests for an operation: its first example, each time under another sun and over other depths, so that none is met twice
 * before all have been.
 * @param {string} name @param {number} [count] of bodies
 */
export function requestsFor(name, count = BODIES) {
  const operation = operations.find((candidate) => candidate.name === name);
  if (operation === undefined) throw new Error(`There is no operation ${name}.`);
  const { scene } =
    operation.examples.find(({ name }) => name === EXAMPLES[operation.name]) ?? operation.examples[0];
  const random = seeded(7);
  const bodies = Array.from({ length: count }, () => JSON.stringify(vary({ ...scene }, random)));
  return { path: operation.path, answer: operation.answer, request: operation.request, bodies };
}

/**
 * Where the first is not what is measured. Attenuation stands for the service around an answer: one that is worked out at once,
 * on the thread that answers.
 * @type {Record<string, string>}
 */
const EXAMPLES = { attenuation: "outer_reef_morning", "mixed-light": "reef_with_lamps" };

/** Rounded, since callers write numbers of so many digits. */
const to = (/** @type {number} */ value, /** @type {number} */ decimals) => Number(value.toFixed(decimals));

/** @param {Record<string, unknown>} scene @param {() => number} random */
function vary(scene, random) {
  if ("port_kind" in scene) return { ...scene, f_number: to(4 + 8 * random(), 3) };
  const varied = { ...scene, wind_speed_m_s: to(2 + 6 * random(), 2) };
  if ("sun_elevation_deg" in scene) Object.assign(varied, { sun_elevation_deg: to(30 + 40 * random(), 2) });
  if ("max_depth_m" in scene) Object.assign(varied, { max_depth_m: to(15 + 6 * random(), 2) });
  return varied;
}
