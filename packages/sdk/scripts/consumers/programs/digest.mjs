// Runs in every runtime: asks the service and computes offline, holds the two to each other byte by byte, and gives a
// digest of all that was computed, so that the runtimes can be compared as well.
import { InvalidSceneError, ProblemError, Sunfathom, SunfathomError } from "@sunfathom/sdk";
import { OfflineSunfathom } from "@sunfathom/sdk/offline";
import * as parts from "@sunfathom/sdk/offline/parts";
import asked from "./asked.json" with { type: "json" };

const everyPart = new Map(Object.entries(parts));

/**
 * @param {string} baseUrl of the service
 * @returns {Promise<string>} how many answers there were, and the start of the SHA-256 of their bytes
 */
export async function digest(baseUrl) {
  let sent = "";
  const online = new Sunfathom({
    baseUrl,
    fetch: async (url, init) => {
      const response = await fetch(url, init);
      sent = await response.clone().text();
      return response;
    },
  });
  const offline = new OfflineSunfathom();
  const texts = [];
  const known = new Set();
  for (const { group, name, body } of asked) {
    const computed = await told(offline[group][name](body));
    if (!known.has(name)) await alone({ group, name, body }, computed);
    known.add(name);
    const served = await told(online[group][name](body));
    // What was told must also be what was sent: an answer that was only read alike would not be the same bytes.
    const bytes = served.startsWith("refused") ? served : sent;
    if (computed !== bytes)
      throw new Error(`${name} ${JSON.stringify(body)}: ${difference(computed, bytes)}`);
    texts.push(computed);
  }
  await beside(online, offline);
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(texts.join("\n")));
  const hex = [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const refused = texts.filter((text) => text.startsWith("refused")).length;
  return `${texts.length - refused} answers and ${refused} problems as served, ${hex.slice(0, 16)}`;
}

/** An answer, or the problem in its place without what names a request. @param {Promise<object>} call */
async function told(call) {
  try {
    return JSON.stringify(await call);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const { name, type, code, status, detail, errors } = error;
    return `refused ${JSON.stringify({ name, type, code, status, detail, errors })}`;
  }
}

/** @param {string} computed @param {string} served */
function difference(computed, served) {
  let at = 0;
  while (computed[at] === served[at]) at += 1;
  const around = (/** @type {string} */ text) => text.slice(Math.max(0, at - 40), at + 40);
  return `computed ...${around(computed)}..., served ...${around(served)}...`;
}

/** Holds a client that has one part alone to what the whole computed. */
async function alone({ group, name, body }, computed) {
  const client = parts.offlineWith([everyPart.get(name)]);
  const own = await told(group === "reference" ? client[group][name]() : client[group][name](body));
  if (own !== computed) throw new Error(`${name} alone: ${difference(own, computed)}`);
}

/** What comes beside answers: errors with the nearest name, what is known of a response, files. */
async function beside(online, offline) {
  for (const client of [online, offline]) {
    const refused = await client.calculations.filterChoice({ dept_m: 5 }).catch((error) => error);
    if (!(refused instanceof InvalidSceneError && refused instanceof SunfathomError)) throw refused;
    if (!refused.errors.some(({ did_you_mean }) => did_you_mean === "depth_m"))
      throw new Error("no nearest name");
  }
  // In a browser these come from a page of another origin, which reads no more of an answer than the service allows.
  // Not of reference data: a browser answers those from its own cache, with the id of the request that brought them.
  const scene = { water_type: "IB", depth_m: 12 };
  const { meta } = await online.calculations.attenuation(scene, { requestId: "consumer-1" }).withResponse();
  if (meta.requestId !== "consumer-1" || meta.etag === undefined) throw new Error(JSON.stringify(meta));
  const zip = await online.quiz.packItems({ level: "beginner", count: 2, title: "Colour" });
  // PKWARE APPNOTE 4.3.7: a file in a ZIP starts with these.
  if (new TextDecoder().decode(zip.slice(0, 2)) !== "PK") throw new Error("no ZIP");
}
