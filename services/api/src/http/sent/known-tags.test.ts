import { describe, expect, it } from "vitest";
import { createApp } from "../../app.js";
import { KnownTags } from "./known-tags.js";

describe("known tags", () => {
  it("are given for the very URL they were kept for", () => {
    const tags = new KnownTags();
    tags.keep("/v1/a?depth_m=5", '"five"');
    expect(tags.get("/v1/a?depth_m=5")).toBe('"five"');
    expect(tags.get("/v1/a?depth_m=5.0")).toBeUndefined();
  });

  it("leave with the oldest URLs once they would take more than about a megabyte", () => {
    const tags = new KnownTags();
    const urls = Array.from({ length: 1000 }, (_, i) => `/v1/a?depth_m=${i}&${"x".repeat(4000)}`);
    for (const url of urls) tags.keep(url, '"tag"');
    const kept = urls.filter((url) => tags.get(url) !== undefined);
    expect(kept.length).toBeGreaterThan(200);
    expect(kept.length).toBeLessThan(300);
    expect(kept).toEqual(urls.slice(-kept.length));
  });
});

describe("a scene asked about again", () => {
  const scene = "water_type=IB&sun_elevation_deg=40";
  const urls = [`/v1/attenuation?${scene}&depth_m=10`, `/v1/attenuation?depth_m=1e1&${scene}`];

  it("has one tag by whichever URL, however often; another tag, or none, gets the answer", async () => {
    const app = await createApp();
    const found: unknown[] = [];
    for (const url of [...urls, ...urls]) {
      const { statusCode, headers } = await app.inject({ url });
      const tag = String(headers.etag);
      for (const asked of [tag, `"other", ${tag}`, `W/${tag}`, '"other"', "*"]) {
        const again = await app.inject({ url, headers: { "if-none-match": asked } });
        found.push([again.statusCode, again.headers.etag === tag, again.body === ""]);
      }
      found.push(statusCode, tag);
    }
    const each = found.slice(0, found.length / urls.length / 2);
    expect(each.slice(0, 6)).toEqual([
      ...Array(3).fill([304, true, true]),
      ...Array(2).fill([200, true, false]),
      200,
    ]);
    expect(found).toEqual([...each, ...each, ...each, ...each]);
    await app.close();
  });

  it("is refused again where it is not valid", async () => {
    const app = await createApp();
    const url = "/v1/attenuation?water_type=IB&depth_m=-1";
    for (let time = 0; time < 2; time += 1) {
      const { statusCode, headers } = await app.inject({ url, headers: { "if-none-match": '"tag"' } });
      expect([statusCode, headers.etag]).toEqual([400, undefined]);
    }
    await app.close();
  });
});
