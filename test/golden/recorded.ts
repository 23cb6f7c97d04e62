/** What is kept of an answer: its numbers, words of a fixed choice and codes. No sentence, and not the scene as it was asked. */

type Value = string | number | boolean | null | Value[] | { [name: string]: Value };
export type Recorded = Value;

/** Fields that are written for people, or that say what was asked and by which model it was answered. */
const LEFT_OUT = new Set([
  "text",
  "why",
  "summary",
  "how_to_shrink",
  "procedure",
  "scene",
  "version",
  "model_version",
  "build",
  "links",
]);

/** Longer lists of numbers are spectra, of which samples and the sum tell whether anything moved. */
const LONG = 40;
const EVERY = 8;

/** @param reply an outcome of `answer` */
export function recorded(reply: { status: string; body?: unknown; problem?: unknown }): Recorded {
  if (reply.status === "ok") return kept(reply.body) ?? null;
  const {
    status,
    code,
    errors = [],
  } = reply.problem as {
    status: number;
    code: string;
    errors?: { pointer: string; code: string }[];
  };
  return { problem: code, status, errors: errors.map(({ pointer, code: why }) => `${pointer} ${why}`) };
}

function kept(value: unknown): Value | undefined {
  if (typeof value === "string") return value.includes(" ") ? undefined : value;
  if (Array.isArray(value)) return listOf(value);
  if (typeof value !== "object" || value === null) return value as Value;
  const fields: { [name: string]: Value } = {};
  for (const [name, field] of Object.entries(value)) {
    const worth = LEFT_OUT.has(name) ? undefined : name === "figures" ? figuresOf(field) : kept(field);
    if (worth !== undefined) fields[name] = worth;
  }
  return fields;
}

function listOf(list: readonly unknown[]): Value {
  if (list.length <= LONG || typeof list[0] !== "number")
    return list.map(kept).filter((item) => item !== undefined);
  const numbers = list as number[];
  const sum = Number(numbers.reduce((total, one) => total + one, 0).toFixed(6));
  return { sum, samples: numbers.filter((_, index) => index % EVERY === 0) };
}

/** By their names: where a figure stands among the others says nothing. */
function figuresOf(figures: { name: string; value: number }[]): Value {
  const named = Object.fromEntries(figures.map(({ name, value }) => [name, value]));
  if (Object.keys(named).length < figures.length)
    throw new Error(`Two figures have one name: ${JSON.stringify(figures)}`);
  return named;
}

/**
 * Where an answer no longer gives what was recorded. What it gives beside that is no difference: fields are added as
 * the wire grows. Lists are compared item by item and are as long as they were, cautions apart: more of them are no other figures.
 */
export function differences(before: Recorded, now: Recorded | undefined, path = ""): string[] {
  if (Array.isArray(before) && Array.isArray(now)) {
    if (path.endsWith("/cautions")) return lost(before, now, path);
    const length =
      before.length === now.length ? [] : [`${path} had ${before.length} items, now ${now.length}`];
    return [...length, ...before.flatMap((item, index) => differences(item, now[index], `${path}/${index}`))];
  }
  if (isFields(before) && isFields(now)) {
    return Object.entries(before).flatMap(([name, field]) =>
      differences(field, now[name], `${path}/${name}`),
    );
  }
  const [was, is] = [JSON.stringify(before), JSON.stringify(now) ?? "nothing"];
  return was === is ? [] : [`${path} was ${was}, is ${is}`];
}

function lost(before: Recorded[], now: Recorded[], path: string): string[] {
  const there = new Set(now.map((caution) => (isFields(caution) ? caution["code"] : caution)));
  return before.flatMap((caution) =>
    isFields(caution) && !there.has(caution["code"] ?? null)
      ? [`${path} no longer has ${caution["code"]}`]
      : [],
  );
}

function isFields(value: Recorded | undefined): value is { [name: string]: Recorded } {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
