// Runs in every runtime: asks the service, computes offline, and gives a digest of all that was computed, so that the
// runtimes can be compared to the byte.
import { InvalidSceneError, Sunfathom, SunfathomError } from "@sunfathom/sdk";
import { OfflineSunfathom } from "@sunfathom/sdk/offline";
import asked from "./asked.json" with { type: "json" };

/**
 * @param {string} baseUrl of the service
 * @returns {Promise<string>} how many answers there were, and the start of the SHA-256 of their bytes
 */
export async function digest(baseUrl) {
  const online = new Sunfathom({ baseUrl });
  const offline = new OfflineSunfathom();
  const texts = [];
  for (const { group, name, body } of asked) texts.push(JSON.stringify(await offline[group][name](body)));

  const choice = asked.findIndex(({ name }) => name === "filterChoice");
  const served = await online.calculations.filterChoice(asked[choice].body);
  if (texts[choice] !== JSON.stringify(served))
    throw new Error("The service answers otherwise than the offline mode.");
  for (const client of [online, offline]) {
    const refused = await client.calculations.filterChoice({ dept_m: 5 }).catch((error) => error);
    if (!(refused instanceof InvalidSceneError && refused instanceof SunfathomError)) throw refused;
    if (!refused.errors.some(({ did_you_mean }) => did_you_mean === "depth_m"))
      throw new Error("no nearest name");
  }
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(texts.join("\n")));
  const hex = [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${texts.length} answers, ${hex.slice(0, 16)}`;
}
