// The limits that the README names are those of the service and of its description, all of them.
import { readFileSync } from "node:fs";
import { defaultLimits } from "@sunfathom/api";
import { describe, expect, it } from "vitest";
import { calculations, plain, type Schema } from "./fuzz/description.js";

const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
const [section = ""] = /^## Limits$[\s\S]*?(?=^## )/m.exec(readme) ?? [];
const rows = section
  .split("\n")
  .filter((line) => line.startsWith("|"))
  .map((line) => line.split("|").map((cell) => cell.trim()));

const from = (least: number): string => (least === 0 ? "up to " : `${least} to `);

/** Sizes of lists and texts by where they stand, such as `kit[].id`. */
function sizesOf(raw: Schema, name: string): [string, string][] {
  const schema = plain(raw);
  const { minItems = 0, maxItems, minLength = 0, maxLength, items, properties = {} } = schema;
  return [
    ...(maxItems === undefined ? [] : [[name, `${from(minItems)}${maxItems} entries`] as [string, string]]),
    ...(maxLength === undefined
      ? []
      : [[name, `${from(minLength)}${maxLength} characters`] as [string, string]]),
    ...(items === undefined ? [] : sizesOf(items, `${name}[]`)),
    ...Object.entries(properties).flatMap(([property, inner]) =>
      sizesOf(inner, name === "" ? property : `${name}.${property}`),
    ),
  ];
}

describe("the README's limits", () => {
  it("of lists and texts are those of the description, each with its name", () => {
    const described = calculations.flatMap(({ post }) => sizesOf(post.body ?? {}, ""));
    const told = rows.flatMap(([, names = "", size = ""]) =>
      [...names.matchAll(/`([^`]+)`/g)].map(([, name]) => `${name}: ${size}`),
    );
    const expected = new Set(described.map(([name, size]) => `${name}: ${size}`));
    expect(told.sort()).toEqual([...expected].sort());
  });

  it("of requests are those that the service has by itself", () => {
    const { connectionsPerAddress, unansweredPerConnection } = defaultLimits;
    const { bodyBytes, urlCharacters, headerBytes, connections, costPerWindow, window_s } = defaultLimits;
    const { documentationPerWindow } = defaultLimits;
    const { headersTimeout_ms, requestTimeout_ms, sendTimeout_ms, heavyPerClient, waitingPerClient } =
      defaultLimits;
    const told = rows
      .filter(([, what = ""]) => !what.includes("`"))
      .map(([, what, size]) => `${what}: ${size}`);
    for (const limit of [
      `body: ${bodyBytes / 1024} kB`,
      `URL: ${urlCharacters} characters`,
      `headers with the request line: ${headerBytes / 1024} kB`,
      `budget of one client: ${costPerWindow} in ${window_s} s`,
      `documentation for one client: ${documentationPerWindow} in ${window_s} s`,
      `connections at a time: ${connections}`,
      `connections of one address: ${connectionsPerAddress}`,
      `unanswered requests of a connection: ${unansweredPerConnection}`,
      `time for the headers to arrive: ${headersTimeout_ms / 1000} s`,
      `time for the whole request to arrive: ${requestTimeout_ms / 1000} s`,
      `time to read the answer: ${sendTimeout_ms / 1000} s`,
      `heavy calculations of one client at a time: ${heavyPerClient}`,
      `heavy calculations of one client that wait: ${waitingPerClient}`,
      `body of a batch: ${defaultLimits.batchBodyBytes / 1024 / 1024} MB`,
      `scene of a batch: ${bodyBytes / 1024} kB`,
      `lists and objects in each other: ${defaultLimits.bodyDepth}`,
      `batches of one client at a time: ${defaultLimits.batchesPerClient}`,
      `batches at a time: ${defaultLimits.batches}`,
      `time for a batch: ${defaultLimits.batchLongest_ms / 1000} s`,
      `wait of a batch for what reading it costs: ${defaultLimits.batchDoor_ms / 1000} s`,
    ])
      expect(told).toContain(limit);
  });
});
