import { filterKinds, waterTypes } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { contractAjv } from "../shape/contract-ajv.test-support.js";
import { toJson } from "../shape/to-json.js";
import { readReference, references } from "./table.js";

function read(name: string) {
  const reference = references.find((entry) => entry.name === name);
  if (reference === undefined) throw new Error(`There is no ${name}.`);
  return JSON.parse(toJson(readReference(reference)));
}

describe("reference data", () => {
  it.each(references)("$name keeps its own description", ({ name, answer }) => {
    const validate = contractAjv.getSchema(answer);
    expect(validate?.(read(name)), contractAjv.errorsText(validate?.errors)).toBe(true);
  });

  it("lists exactly the water types and filter kinds that a scene can name", () => {
    const waters: { water_type: string }[] = read("water-types").water_types;
    expect(waters.map(({ water_type }) => water_type)).toEqual([...waterTypes]);
    const filters: { filter_kind: string }[] = read("filter-kinds").filter_kinds;
    expect(filters.map(({ filter_kind }) => filter_kind)).toEqual([...filterKinds]);
  });
});
