// Asks a server as fast as it answers, or at a rate, and prints what came of it.
import autocannon from "autocannon";
import { requestsFor } from "./scenes.mjs";

const { address, operation, get, seconds, connections, rate } = JSON.parse(process.argv[2]);
const { path, bodies } = requestsFor(operation);
const headers = { "content-type": "application/json" };

/** A GET of each scene, by whoever already has its answer. */
async function conditional() {
  const requests = [];
  for (const body of bodies) {
    const url = `${path}?${new URLSearchParams(JSON.parse(body))}`;
    const first = await fetch(`${address}${url}`);
    const etag = first.headers.get("etag") || '"known"';
    await first.arrayBuffer();
    requests.push({ method: "GET", path: url, headers: { "if-none-match": etag } });
  }
  return requests;
}

const requests = get
  ? await conditional()
  : bodies.map((/** @type {string} */ body) => ({ method: "POST", path, headers, body }));
const before = process.cpuUsage();
const begun = performance.now();
const result = await autocannon({
  url: address,
  duration: seconds,
  connections,
  requests,
  ...(rate === undefined ? {} : { overallRate: rate }),
});
const { user, system } = process.cpuUsage(before);
const expected = get ? result["3xx"] : result["2xx"];
const other = result.requests.total - expected;
if (other > 0 || result.errors > 0)
  throw new Error(`${other} answers of another kind, ${result.errors} errors`);
console.log(
  JSON.stringify({
    requests: result.requests.total,
    perSecond: result.requests.total / result.duration,
    median_ms: result.latency.p50,
    p99_ms: result.latency.p99,
    askerBusy: (user + system) / 1000 / (performance.now() - begun),
  }),
);
