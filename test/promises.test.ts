// A change that breaks a client is found out, and one that does not is let in: on the description as it is, and changes to it.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { broken } from "../.ci/promises/broken.mjs";
import { promised } from "../.ci/promises/promised.mjs";

const text = readFileSync(new URL("../openapi/openapi.json", import.meta.url), "utf8");
// biome-ignore lint/suspicious/noExplicitAny: a description is changed here in ways that no type of it allows.
type Description = any;
const description = (): Description => JSON.parse(text);
const kept = promised(description());

function faultsAfter(change: (changed: Description) => void): string[] {
  const changed = description();
  change(changed);
  return broken(kept, promised(changed));
}

const schemas = (changed: Description) => changed.components.schemas;

describe("the promises of the description", () => {
  it("are kept by itself", () => {
    expect(Object.keys(kept.operations).length).toBeGreaterThan(30);
    expect(broken(kept, kept)).toEqual([]);
  });

  it.each<[string, (changed: Description) => void, RegExp]>([
    ["an operation goes", (d) => delete d.paths["/v1/attenuation"], /^GET \/v1\/attenuation is gone$/],
    ["a method goes", (d) => delete d.paths["/v1/attenuation"].get, /^GET \/v1\/attenuation is gone$/],
    [
      "a field of a scene goes",
      (d) => delete schemas(d).Scene.properties.depth_m,
      /^Scene: depth_m is gone$/,
    ],
    [
      "a field becomes needed",
      (d) => {
        schemas(d).Scene.required = ["iso"];
      },
      /^Scene: now needs iso$/,
    ],
    [
      "a range narrows",
      (d) => {
        schemas(d).Scene.properties.depth_m.maximum = 60;
      },
      /^Scene\.depth_m: maximum of 60, before 100$/,
    ],
    [
      "a parameter narrows",
      (d) => {
        d.components.parameters.depth_m.schema.minimum = 1;
      },
      /^query depth_m: minimum of 1, before 0\.1$/,
    ],
    ["a value is no longer taken", (d) => schemas(d).Bottom.enum.pop(), /^Bottom: no longer takes \w+$/],
    [
      "a field of an answer goes",
      (d) => delete schemas(d).FilterChoiceAnswer.properties.reasons,
      /^FilterChoiceAnswer: reasons is gone$/,
    ],
    [
      "a field of an answer may be missing",
      (d) => schemas(d).FilterChoiceAnswer.required.splice(0, 1),
      /^FilterChoiceAnswer: \w+ may now be missing$/,
    ],
    [
      "a closed list of an answer grows",
      (d) => schemas(d).ExposureVerdict.enum.push("perhaps"),
      /^ExposureVerdict: may now be perhaps/,
    ],
    [
      "a number becomes a text",
      (d) => {
        schemas(d).Scene.properties.iso.type = "string";
      },
      /^Scene\.iso: type string, before number$/,
    ],
    [
      "a status goes",
      (d) => delete d.paths["/v1/attenuation"].post.responses["400"],
      /^POST \/v1\/attenuation no longer gives application\/problem\+json with 400$/,
    ],
  ])("are broken where %s", (_what, change, fault) => {
    const faults = faultsAfter(change);
    expect(faults.length).toBeGreaterThan(0);
    expect(
      faults.some((one) => fault.test(one)),
      faults.slice(0, 3).join("\n"),
    ).toBe(true);
  });

  it("are kept where what is taken grows wider, and what is given fuller", () => {
    expect(
      faultsAfter((d) => {
        schemas(d).Scene.properties.depth_m.maximum = 200;
        schemas(d).Scene.properties.pressure_bar = { type: "number" };
        schemas(d).QtiVersion.enum.push("4.0");
        schemas(d).FilterChoiceAnswer.properties.further = { type: "string" };
        schemas(d).FilterChoiceAnswer.required.push("further");
        schemas(d).Scene.description = "In other words.";
        d.paths["/v1/further"] = d.paths["/v1/attenuation"];
      }),
    ).toEqual([]);
  });

  it("are not given by what is open to change", () => {
    const changed = description();
    for (const operation of Object.values<Description>(changed.paths["/v1/batches"]))
      operation["x-preview"] = true;
    const without = promised(changed);
    expect(without.operations["POST /v1/batches"]).toBeUndefined();
    expect(without.given["BatchLine"]).toBeUndefined();
    expect(kept.given["BatchLine"]).toBeDefined();
  });
});
