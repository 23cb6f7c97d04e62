// Processor time of a request of each decision over that of attenuation as commit 79965e4 computes it, both from the body to the bytes
// of the answer, in turn. Prints them as JSON. usage: node decisions.mjs [rounds]
import { toBytes } from "@sunfathom/answers";
import { operations } from "../service/operations.mjs";
import { requestsFor } from "../service/scenes.mjs";
import { median } from "../statistics.mjs";
import { attenuationBytes } from "./attenuation-79965e4.mjs";

const ROUNDS = Number(process.argv[2] ?? 7);
/** Requests a round: each is of a scene that was not met before. */
const REFERENCES = 400;
/** @type {Record<string, number>} */
const REQUESTS = {
  "filter-choice": 12,
  "dive-advice": 8,
  "colour-recovery": 30,
  "white-balance": 60,
  "exposure-loss": 150,
  "mixed-light": 150,
  attenuation: 400,
};
/** Until everything is compiled that will be. */
const WARM_UP_ROUNDS = 3;

/** Other scenes in every round. @param {string} name */
function asker(name) {
  const count = (REQUESTS[name] ?? 0) * (ROUNDS + WARM_UP_ROUNDS);
  const bodies = requestsFor(name, count).bodies[Symbol.iterator]();
  const operation = operations.find((one) => one.name === name);
  return () => {
    const { value } = bodies.next();
    const scene = operation?.prepare(JSON.parse(value), []);
    const answer = scene?.status === "ready" ? scene.compute() : scene;
    if (answer?.status !== "ok") throw new Error(`${name} refuses ${value}`);
    toBytes(answer);
  };
}

const referenceBodies = requestsFor("attenuation", REFERENCES * (ROUNDS + WARM_UP_ROUNDS) * 8).bodies[
  Symbol.iterator
]();
const reference = () => attenuationBytes(referenceBodies.next().value);

/** Processor time, ms a call. @param {() => void} call @param {number} count */
function timeOf(call, count) {
  const before = process.cpuUsage();
  for (let i = 0; i < count; i++) call();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000 / count;
}

const measured = Object.entries(REQUESTS).map(([operation, count]) => ({
  operation,
  count,
  ask: asker(operation),
  ms: /** @type {number[]} */ ([]),
  reference_ms: /** @type {number[]} */ ([]),
}));
for (let round = -WARM_UP_ROUNDS; round < ROUNDS; round++)
  for (const { count, ask, ms, reference_ms } of measured) {
    const before_ms = timeOf(reference, REFERENCES / 2);
    const own_ms = timeOf(ask, count);
    const after_ms = timeOf(reference, REFERENCES / 2);
    if (round < 0) continue;
    ms.push(own_ms);
    reference_ms.push((before_ms + after_ms) / 2);
  }

console.log(
  JSON.stringify(
    measured.map(({ operation, ms, reference_ms }) => ({
      operation,
      ms: median(ms),
      reference_ms: median(reference_ms),
      ratio: median(ms.map((own, round) => own / (reference_ms[round] ?? Number.NaN))),
    })),
  ),
);
