import { callOf, type Done } from "../core/call.js";
import { AbortedError, NotOfflineError } from "../core/errors.js";
import type { Call, SendOptions } from "../core/types.js";
import { expecting } from "../core/with-model-version.js";
import type { OfflineOptions } from "./options.js";
import type { OfflinePart, Sources } from "./part.js";
import { brought, later } from "./ready.js";
import { bringRest, NotHereYet } from "./seldom.js";

/** A call that is computed here, on the thread that makes it. */
export function computing<T>(content: () => Promise<unknown>, options: SendOptions = {}): Call<T> {
  return callOf(compute<T>(content, options));
}

async function compute<T>(
  content: () => Promise<unknown>,
  { signal, fields }: SendOptions,
): Promise<Done<T>> {
  // Leaves the caller the time to abort, as a request would.
  await undefined;
  if (signal?.aborted) throw new AbortedError(signal.reason);
  // Names of fields save nothing here: the answer is whole. In brief it would be another one.
  if (fields === "brief") throw new NotOfflineError("Only a service answers in brief.");
  return { data: (await content()) as T, meta: { source: "offline", attempts: 1 } };
}

/**
 * What a part answers.
 * @param body the scene; nothing for reference data
 * @throws ProblemError where it has no answer
 */
export async function contentOf(
  part: OfflinePart,
  body: object | undefined,
  { expectModelVersion, language = "en" }: OfflineOptions,
): Promise<object> {
  const { group, wider } = part;
  // Of a scene that is no object, nothing is known.
  const { language: asked = language } = Object(body) as { language?: unknown };
  // English is here already.
  const isEnglish = part.saidIn === undefined || asked === "en";
  const tongue = isEnglish ? undefined : await (await later()).textsIn(asked, language);
  const isFree = group !== "calculations" || expectModelVersion === undefined;
  const received = asReceived(isFree ? body : expecting(expectModelVersion, body));
  const ask = ({ source, saidIn }: Sources) =>
    (tongue === undefined ? source : (saidIn?.(tongue.words) ?? source)).reply(received);
  let replied = await replyWithAll(() => ask(part));
  if (replied.status === "refused" && wider !== undefined && isInvalid(replied.refusal))
    replied = await askWider(wider, ask);
  if (replied.status === "refused") {
    const { refusalError } = await later();
    throw refusalError(replied.refusal, tongue?.problems);
  }
  return asReceived(replied.body);
}

/** A reply, once all is here that it needs: computing is begun again where something was not. */
async function replyWithAll<T>(reply: () => T): Promise<T> {
  try {
    return reply();
  } catch (error) {
    if (!(error instanceof NotHereYet)) throw error;
    await bringRest();
    return reply();
  }
}
/** Whether the scene is none of the plain ones: it may be one that asks for more. */
const isInvalid = (refusal: { code?: unknown }): boolean => refusal.code === "invalid_scene";

/** @throws ConnectionError where what answers such scenes cannot be loaded */
async function askWider<T>(wider: () => Promise<Sources>, ask: (sources: Sources) => T): Promise<T> {
  const sources = await brought(wider);
  return replyWithAll(() => ask(sources));
}

/** What is left of a value after its way through JSON: `undefined` is absent, and nothing is shared with the caller. */
function asReceived<T>(value: T): T {
  const text: string | undefined = JSON.stringify(value);
  // Of a scene that is no object at all, a service would receive nothing either.
  return text === undefined ? value : JSON.parse(text);
}
