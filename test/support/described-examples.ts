import { readFileSync } from "node:fs";

const description: unknown = JSON.parse(
  readFileSync(new URL("../../openapi/openapi.json", import.meta.url), "utf8"),
);

type Fields = Readonly<Record<string, unknown>>;

/** Every object in the examples of the description, however deep, that has all the fields `names`. */
export function describedExamples(...names: string[]): Fields[] {
  return examplesIn(description)
    .flatMap(objectsIn)
    .filter((object) => names.every((name) => name in object));
}

/** What stands under `example` or `examples`, anywhere. */
function examplesIn(value: unknown): unknown[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) =>
    name === "examples" || name === "example" ? [part] : examplesIn(part),
  );
}

function objectsIn(value: unknown): Fields[] {
  if (typeof value !== "object" || value === null) return [];
  const inside = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? inside : [{ ...value }, ...inside];
}
