// Every snippet of the README, run as it stands against the real service.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { createApp } from "@sunfathom/api";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { bundle, home } from "./bundle.test-support.js";

const readme = readFileSync(join(home, "README.md"), "utf8");
const snippets = [...readme.matchAll(/^```ts\n([\s\S]*?)^```/gm)].map(([, code = ""]) => code);

let app: Awaited<ReturnType<typeof createApp>>;
let baseUrl: string;
let folder: string;
beforeAll(async () => {
  app = await createApp();
  baseUrl = await app.listen({ host: "127.0.0.1", port: 0 });
  folder = mkdtempSync(join(tmpdir(), "readme-"));
});
afterAll(async () => {
  await app.close();
  rmSync(folder, { recursive: true });
});

/** Runs a snippet and gives what it printed. */
async function run(snippet: string, name: string): Promise<unknown[]> {
  const { code } = await bundle(snippet.replaceAll("https://light.example.org", baseUrl), false);
  const file = join(folder, `${name}.mjs`);
  writeFileSync(file, code);
  const log = vi.spyOn(console, "log").mockReturnValue();
  try {
    await import(/* @vite-ignore */ pathToFileURL(file).href);
    return log.mock.calls.map((call) => (call.length === 1 ? call[0] : call));
  } finally {
    log.mockRestore();
  }
}

describe("the README", () => {
  it("starts with a call that answers", async () => {
    expect(snippets).toHaveLength(8);
    expect(await run(snippets[0]!, "start")).toEqual([["red", expect.any(Number), expect.any(String)]]);
  });

  it("labels the crate of a booking, and says what is wrong with one that cannot be", async () => {
    const [label, refused] = (await run(snippets[1]!, "booking")) as string[];
    expect(label).toMatch(/^Take (filter (red|magenta)-a|no lens filter)( \(a close call\))?\.\n/);
    expect(label?.split("\n").length).toBeGreaterThan(2);
    expect(refused).toMatch(/^\/(min|max)_depth_m: /);
  });

  it("shows a course how the colours go", async () => {
    const lines = (await run(snippets[2]!, "course")) as string[];
    const red = lines.slice(0, -1).map((line) => Number(/^[\d.]+ m: red ([\d.]+) %/.exec(line)?.[1]));
    expect(red.length).toBeGreaterThan(3);
    expect(red).toEqual([...red].sort((a, b) => b - a));
    expect(lines.at(-1)).toMatch(/^\d+ water types, request [\w-]+$/);
  });

  it("plans the same day on the boat and in the office", async () => {
    const [boat, office] = (await run(snippets[3]!, "trip")) as string[][];
    expect(boat).toHaveLength(3);
    for (const line of boat ?? []) expect(line).toMatch(/^\d\d:\d\d (no filter|(red|magenta) \d(\.\d+)?)$/);
    expect(office).toEqual(boat);
  });

  it("chooses for two sites at two times in one call", async () => {
    const lines = (await run(snippets[4]!, "batch")) as string[][];
    expect(lines).toHaveLength(4);
    for (const [site, time, kind] of lines)
      expect(`${site} ${time} ${kind}`).toMatch(
        /^(Gannet Stair|Old Mole) 2027-01-16T\S+ (none|red|magenta)$/,
      );
  });

  it("shows a picture as pixels, and draws another on the spot", async () => {
    const [pixels, characters] = (await run(snippets[5]!, "pictures")) as number[];
    expect(pixels).toBeGreaterThan(10_000);
    expect(characters).toBeGreaterThan(2000);
  });

  it("prints a slate with the parts that it needs", async () => {
    const [line] = (await run(snippets[6]!, "slate")) as string[];
    expect(line).toMatch(/^12 m: (no filter|(red|magenta) \d(\.\d+)?), ISO \d+ at f\/\d+(\.\d)?$/);
  });

  it("goes to sea once all is there", async () => {
    const [summary] = (await run(snippets[7]!, "sea")) as string[];
    expect(summary).toMatch(/^[A-Z].{20,}\.$/);
  });

  it("lists every group and the reference methods", () => {
    for (const name of ["calculations", "reference", "service"]) expect(readme).toContain(`client.${name}`);
  });
});
