// Every field that a request can hold, wherever it stands, with a right scene around it.
import { mountingInSceneNames } from "../../packages/contract/src/index.js";
import type { Scene } from "./arbitrary.js";
import { compatible, overOpening } from "./compatible.js";
import { type Operation, plain, type Schema } from "./description.js";

export interface Field {
  /** JSON pointer, for example `/lamps/0/flux_lm`. */
  pointer: string;
  schema: Schema;
  /** A right scene with `value` in the field, where `value` is right. */
  sceneWith: (value: unknown) => Scene;
}

/** @returns fields whose values are no objects: each list before what its first entry holds */
export function fieldsOf({ body = {}, bodyName, examples }: Operation): Field[] {
  const around = (name: string, value: unknown): Scene =>
    bodyName === "Scene"
      ? compatible({ [name]: value }, pickFor(name))
      : overOpening(
          mounted({ ...(examples.find((example) => name in example) ?? examples[0]), [name]: value }),
          name,
        );
  return Object.entries(body.properties ?? {}).flatMap(([name, raw]) =>
    inside(raw, `/${name}`, (value) => varied(around(name, value))),
  );
}

/** What differs in a batch is a field of the scenes of its calculation: an aperture is one of both kinds. */
const varied = (scene: Scene): Scene =>
  scene["operation"] === "filter-mounting" && "vary" in scene
    ? { ...scene, vary: [{ f_number: [4] }] }
    : scene;

/** A radius goes with a dome alone. */
function mounted(scene: Scene): Scene {
  const { dome_radius_mm: _, ...flat } = scene;
  return scene["port_kind"] === "dome" ? scene : flat;
}

/** How `compatible` is to decide so that the field stays. */
function pickFor(name: string): number {
  if (mountingInSceneNames.some((known) => known === name)) return 1;
  return /^(latitude|longitude|time|local_time|camera_heading)/.test(name) ? 3 : 0;
}

function inside(raw: Schema, pointer: string, sceneWith: (value: unknown) => Scene): Field[] {
  const schema = plain(raw);
  if (schema.type === "array" && schema.items !== undefined) {
    const [example] = (schema.examples ?? []) as unknown[][];
    const [, ...others] = example ?? [];
    return [
      { pointer, schema, sceneWith },
      ...inside(schema.items, `${pointer}/0`, (value) => sceneWith([value, ...others])),
    ];
  }
  if (schema.type !== "object") return [{ pointer, schema, sceneWith }];
  const { properties = {}, required = [] } = schema;
  const needed = Object.fromEntries(
    required.map((name) => [name, plain(properties[name] ?? {}).examples?.[0]]),
  );
  return Object.entries(properties).flatMap(([name, property]) =>
    inside(property, `${pointer}/${name}`, (value) => sceneWith({ ...needed, [name]: value })),
  );
}

/** A copy of `scene` with `value` at a pointer, whether it is right there or not. */
export function put(scene: Scene, pointer: string, value: unknown): Scene {
  const copy = structuredClone(scene);
  const steps = pointer.slice(1).split("/");
  const last = steps.pop() ?? "";
  const owner = steps.reduce<unknown>((inner, step) => (inner as Scene)[step], copy) as Scene;
  owner[last] = value;
  return copy;
}
