import type { BatchRequest, CalculationName, Language, TextUnits } from "@sunfathom/contract";

/** A scene of a batch whose turn has come. */
export interface BatchScene {
  /** What its line is called. */
  id: string;
  /** Of a scene that `vary` made: the place of its value in each entry. */
  at?: readonly number[];
  operation: CalculationName;
  /** As JSON: scenes are many, and read one at a time. */
  scene: string;
}

/** A batch that is valid, small enough to wait: its scenes as text, those of `vary` in the parts that they are made of. */
export type BatchPlan = {
  language: Language | undefined;
  /** How many scenes it has. */
  size: number;
} & (
  | { kind: "items"; items: readonly BatchScene[] }
  | { kind: "varied"; operation: CalculationName; common: string; entries: readonly (readonly string[])[] }
);

/** One entry of `vary`: values by the name of their field. */
type VaryEntry = Readonly<Record<string, readonly unknown[]>>;

/** @param request that has been checked */
export function planOf(request: BatchRequest): BatchPlan {
  const { items, operation, scene = {}, vary = [], language, units } = request;
  if (items !== undefined || operation === undefined) {
    const texts = (items ?? []).map((item) => ({ ...item, scene: withUnits(members(item.scene), units) }));
    return { language, size: texts.length, kind: "items", items: texts };
  }
  const entries = vary.map((entry) => partsOf(entry as VaryEntry));
  const replaced = new Set(vary.flatMap((entry) => Object.keys(entry)));
  const kept = Object.fromEntries(Object.entries(scene).filter(([name]) => !replaced.has(name)));
  const size = entries.reduce((product, parts) => product * parts.length, 1);
  return { language, size, kind: "varied", operation, common: unitsFirst(members(kept), units), entries };
}

/** The `index`th scene: of `vary`, the last entry runs fastest. */
export function sceneAt(plan: BatchPlan, index: number): BatchScene {
  if (plan.kind === "items") {
    const item = plan.items[index];
    if (item === undefined) throw new Error(`A batch of ${plan.size} has no scene ${index}.`);
    return item;
  }
  const at: number[] = [];
  let left = index;
  for (const parts of [...plan.entries].reverse()) {
    at.unshift(left % parts.length);
    left = Math.floor(left / parts.length);
  }
  const parts = [plan.common, ...plan.entries.map((entry, nth) => entry[at[nth] ?? 0] ?? "")];
  return { id: at.join("-"), at, operation: plan.operation, scene: object(parts) };
}

/** What each of its values makes of a scene, as members of an object. */
function partsOf(entry: VaryEntry): string[] {
  const fields = Object.entries(entry);
  const length = fields[0]?.[1].length ?? 0;
  return Array.from({ length }, (_, nth) =>
    members(Object.fromEntries(fields.map(([name, values]) => [name, values[nth]]))),
  );
}

/** An object's JSON without its braces. */
const members = (value: object): string => JSON.stringify(value).slice(1, -1);

const object = (parts: readonly string[]): string => `{${parts.filter((part) => part !== "").join(",")}}`;

/** Ahead of all that a scene says: of a name that stands twice, the last counts where JSON is read. */
const unitsFirst = (text: string, units: TextUnits | undefined): string =>
  [...(units === undefined ? [] : [`"units":${JSON.stringify(units)}`]), text].filter(Boolean).join(",");

const withUnits = (text: string, units: TextUnits | undefined): string => object([unitsFirst(text, units)]);
