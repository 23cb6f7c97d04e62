// Asks at a steady rate, whether or not answers have come, and prints how long each took: from when it was due, so that a
// server that falls behind is not flattered.
import { Agent, request as ask } from "node:http";
import { requestsFor } from "./scenes.mjs";

const { address, operation, seconds, rate } = JSON.parse(process.argv[2]);
const { path, bodies } = requestsFor(operation);
const { hostname, port } = new URL(address);
const agent = new Agent({ keepAlive: true, maxSockets: 64 });
const total = Math.floor(seconds * rate);
/** @type {number[]} */
const times_ms = [];
let failed = 0;

/** @param {number} n @param {number} due_ms */
function send(n, due_ms) {
  const body = bodies[n % bodies.length];
  const headers = { "content-type": "application/json", "content-length": Buffer.byteLength(body) };
  const outgoing = ask({ agent, hostname, port, path, method: "POST", headers }, (response) => {
    if (response.statusCode !== 200) failed += 1;
    response.on("end", () => times_ms.push(performance.now() - due_ms)).resume();
  });
  outgoing.on("error", () => {
    failed += 1;
  });
  outgoing.end(body);
}

const begun = performance.now();
for (let n = 0; n < total; n++) {
  const due_ms = begun + (1000 * n) / rate;
  // Timers are too coarse: this core has nothing else to do.
  while (performance.now() < due_ms) await new Promise((resolve) => setImmediate(resolve));
  send(n, due_ms);
}
while (times_ms.length + failed < total) await new Promise((resolve) => setTimeout(resolve, 10));
agent.destroy();
if (failed > 0) throw new Error(`${failed} requests failed`);
times_ms.sort((a, b) => a - b);
const at = (/** @type {number} */ share) => times_ms[Math.floor(share * (times_ms.length - 1))];
console.log(JSON.stringify({ rate, median_ms: at(0.5), p99_ms: at(0.99), most_ms: at(1) }));
