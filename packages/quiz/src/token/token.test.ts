import { MODEL_VERSION } from "@sunfathom/planner";
import { afterEach, describe, expect, it } from "vitest";
import type { Item } from "../item/item.js";
import { CATALOGUES } from "../messages/catalogue.js";
import { itemsFor, type PaperRequest } from "../paper/items-for.js";
import { fromBase64url, toBase64url } from "./base64url.js";
import { checkKeyring, type Keyring } from "./keyring.js";
import { openPaper, sealPaper } from "./paper-token.js";
import { seal } from "./seal.js";

const key = (fill: number) => new Uint8Array(32).fill(fill);
const keyring: Keyring = { current: "may", keys: { may: key(1), april: key(2) } };
const request: PaperRequest = {
  seed: "7f3a-secret",
  level: "working",
  count: 12,
  units: "metric",
  language: "en",
};
const items = itemsFor(request);
const NOW_S = 1_800_000_000;
const sealed = (ring = keyring) =>
  sealPaper({ request, items }, { keyring: ring, now_s: NOW_S, lifetime_s: 3600 });
const opened = (token: string, now_s = NOW_S + 10, ring = keyring) =>
  openPaper(token, { keyring: ring, now_s });

describe("base64url", () => {
  it("is that of RFC 4648: its test vectors of section 10 without padding, and the URL alphabet", () => {
    const vectors = { f: "Zg", fo: "Zm8", foo: "Zm9v", foob: "Zm9vYg", fooba: "Zm9vYmE", foobar: "Zm9vYmFy" };
    for (const [text, coded] of Object.entries(vectors)) {
      const bytes = new TextEncoder().encode(text);
      expect(toBase64url(bytes)).toBe(coded);
      expect(fromBase64url(coded)).toEqual(bytes);
    }
    expect(toBase64url(Uint8Array.of(251, 255, 191))).toBe("-_-_");
    // As Node's own coder writes all bytes.
    const all = Uint8Array.from({ length: 256 }, (_, i) => i);
    expect(toBase64url(all)).toBe(Buffer.from(all).toString("base64url"));
  });

  it("reads one spelling only", () => {
    for (const wrong of ["Zg==", "Zh", "Z", "Zm9v+", "Zm 9v"]) expect(fromBase64url(wrong)).toBeUndefined();
  });
});

describe("a paper's token", () => {
  it("gives the paper back with its keys, says its model version and when it expires", async () => {
    const { token, model_version, expires } = await sealed();
    expect(model_version).toBe(MODEL_VERSION);
    expect(Date.parse(expires)).toBe((NOW_S + 3600) * 1000);
    expect(await opened(token)).toEqual({ request, items, model_version });
  });

  it("shows neither seed nor keys, and never looks the same twice", async () => {
    const [first, second] = [(await sealed()).token, (await sealed()).token];
    expect(first).not.toBe(second);
    const readable =
      first
        .split(".")
        .map((part) => Buffer.from(part, "base64url").toString("latin1"))
        .join(" ") + first;
    for (const hidden of ["secret", "working", MODEL_VERSION]) expect(readable).not.toContain(hidden);
    expect(first.length).toBeLessThan(600);
  });

  it("is refused with any one sign changed", async () => {
    const { token } = await sealed();
    for (let i = 0; i < token.length; i += 1) {
      const sign = token[i] === "A" ? "B" : "A";
      const altered = token.slice(0, i) + sign + token.slice(i + 1);
      await expect(opened(altered), `sign ${i}`).rejects.toThrow(
        expect.objectContaining({ code: expect.stringMatching(/^token_(malformed|key_unknown|refused)$/) }),
      );
    }
  });

  it("is refused when cut, lengthened, or sealed by another key under the same name", async () => {
    const { token } = await sealed();
    for (const wrong of ["", "sq1", token.slice(0, -4), `${token}.x`, token.replace("sq1", "sq2")]) {
      await expect(opened(wrong)).rejects.toThrow(
        expect.objectContaining({ name: "QuizProblem", field: "token" }),
      );
    }
    await expect(opened(token, NOW_S, { current: "may", keys: { may: key(9) } })).rejects.toThrow(
      expect.objectContaining({ code: "token_refused" }),
    );
    // Passed off as sealed by a key that has the same bytes.
    await expect(
      opened(token.replace(".may.", ".june."), NOW_S, { current: "june", keys: { june: key(1) } }),
    ).rejects.toThrow(expect.objectContaining({ code: "token_refused" }));
  });

  it("expires", async () => {
    const { token } = await sealed();
    await expect(opened(token, NOW_S + 3599)).resolves.toBeDefined();
    await expect(opened(token, NOW_S + 3600)).rejects.toThrow(
      expect.objectContaining({ code: "token_expired" }),
    );
  });

  it("is held until its paper closes, where it has a close, and expires so much later", async () => {
    const closing = { keyring, now_s: NOW_S, lifetime_s: 3600, closes_s: NOW_S + 600 };
    const { token, ...told } = await sealPaper({ request, items }, closing);
    const closes_at = new Date((NOW_S + 600) * 1000).toISOString();
    expect(told).toMatchObject({ release: "after_close", closes_at });
    expect(await opened(token, NOW_S + 599.9)).toMatchObject({ held_until: closes_at });
    expect(await opened(token, NOW_S + 600)).not.toHaveProperty("held_until");
    await expect(opened(token, NOW_S + 4199)).resolves.toBeDefined();
    await expect(opened(token, NOW_S + 4200)).rejects.toThrow(
      expect.objectContaining({ code: "token_expired" }),
    );
  });

  it("outlives a change of the current key, until its own is taken out", async () => {
    const old = await sealed({ ...keyring, current: "april" });
    await expect(opened(old.token)).resolves.toBeDefined();
    await expect(opened(old.token, NOW_S, { current: "may", keys: { may: key(1) } })).rejects.toThrow(
      expect.objectContaining({ code: "token_key_unknown" }),
    );
  });

  it("is refused where the questions are no longer those that were asked", async () => {
    const other = { request: { ...request, seed: "another" }, items };
    const { token } = await sealPaper(other, { keyring, now_s: NOW_S, lifetime_s: 60 });
    await expect(opened(token)).rejects.toThrow(expect.objectContaining({ code: "questions_changed" }));
    const stale = JSON.stringify({ request, model_version: "0000", digest: "", expires_s: NOW_S + 60 });
    await expect(opened(await seal(stale, keyring))).rejects.toThrow(
      expect.objectContaining({ code: "questions_changed", message: expect.stringContaining("0000") }),
    );
  });
});

describe("a text that is mended", () => {
  const { safety, light, common } = CATALOGUES.en;
  const before = { option: { ...safety.safe_lamps.option }, stem: light.red_left.stem, right: common.right };
  afterEach(() => {
    Object.assign(safety.safe_lamps.option, before.option);
    light.red_left.stem = before.stem;
    common.right = before.right;
  });

  it("leaves open papers as they are, though the lengths of texts have a say in what is drawn", async () => {
    const asked = { ...request, count: 60, templates: ["safe_lamps", "red_left"] } satisfies PaperRequest;
    const paper = itemsFor(asked);
    const { token } = await sealPaper(
      { request: asked, items: paper },
      { keyring, now_s: NOW_S, lifetime_s: 60 },
    );
    const { option } = safety.safe_lamps;
    for (const [id, text] of Object.entries(option))
      Object.assign(option, { [id]: `${text}${"!".repeat(id.length)}` });
    light.red_left.stem = () => "How much red is left?";
    common.right = "Yes.";
    // Drawn today, the paper would be another one.
    expect(itemsFor(asked).map(({ origin }) => origin)).not.toEqual(paper.map(({ origin }) => origin));
    const again = (await opened(token)).items;
    expect(again.map(({ given }) => given)).toEqual(paper.map(({ given }) => given));
    const keysOf = (item: Item) => "options" in item && item.options.map(({ id, right }) => [id, right]);
    expect(again.map(keysOf)).toEqual(paper.map(keysOf));
    expect(again.find(({ template }) => template === "red_left")?.stem).toBe("How much red is left?");
  });
});

describe("a keyring", () => {
  it.each([
    [{ current: "june", keys: keyring.keys }],
    [{ current: "may", keys: { may: new Uint8Array(16) } }],
    [{ current: "a.b", keys: { "a.b": key(1) } }],
  ])("that cannot work is refused at the start", (ring) => {
    expect(() => checkKeyring(ring)).toThrow(RangeError);
    expect(() => checkKeyring(keyring)).not.toThrow();
  });
});
