import { itemsFor, type PaperRequest } from "@sunfathom/quiz";
import { describe, expect, it } from "vitest";
import { drawPaper } from "./paper.js";

const make = async (request: PaperRequest) => itemsFor(request);

describe("a paper", () => {
  it("is in metres and English unless asked otherwise, of every kind of question unless some are named", async () => {
    const { request, items } = await drawPaper({ level: "working", count: 3 }, make);
    expect(request).toEqual({
      seed: expect.any(String),
      level: "working",
      count: 3,
      units: "metric",
      language: "en",
    });
    expect(items).toHaveLength(3);
  });

  it("keeps to what is asked for", async () => {
    const asked = { level: "working", count: 2, units: "metric_and_imperial", language: "en" } as const;
    const { request, items } = await drawPaper({ ...asked, templates: ["red_reach"] }, make);
    expect(request).toEqual({ ...asked, seed: request.seed, templates: ["red_reach"] });
    expect(items.map(({ template }) => template)).toEqual(["red_reach", "red_reach"]);
  });

  // 128 random bits, as 22 characters of base64url (RFC 4648, section 5): nobody draws the same paper by trying.
  it("has a seed that nobody can guess", async () => {
    const papers = await Promise.all([1, 2, 3].map(() => drawPaper({ level: "beginner", count: 1 }, make)));
    const seeds = papers.map(({ request }) => request.seed);
    expect(new Set(seeds).size).toBe(3);
    for (const seed of seeds) expect(seed).toMatch(/^[\w-]{22}$/);
  });
});
