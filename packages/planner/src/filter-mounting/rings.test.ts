import { describe, expect, it } from "vitest";
import { SceneProblem } from "../scene/scene-problem.js";
import { filterMounting } from "./filter-mounting.js";
import { sceneOf } from "./mounting-scenes.test-support.js";
import { checkRingIds, ringsFrom } from "./rings.js";

const ring = (id: string, from_mm: number, to_mm: number, thickness_mm = 3) => ({
  id,
  from_mm,
  to_mm,
  thickness_mm,
});
const mounted = (changes: Parameters<typeof sceneOf>[0]) =>
  filterMounting(sceneOf({ focal_length_mm: 24, lens_thread_mm: 67, holder: "screw_on_lens", ...changes }));
const codes = (changes: Parameters<typeof sceneOf>[0]) => mounted(changes).reasons.map(({ code }) => code);

describe("rings between lens and filter", () => {
  it("are named in the order in which they are screwed on", () => {
    const { ring_chain, reasons, procedure } = mounted({
      filter_thread_mm: 82,
      rings: [ring("b", 72, 82), ring("x", 58, 67), ring("a", 67, 72)],
    });
    expect(ring_chain).toEqual({
      closes: true,
      from_mm: 67,
      to_mm: 82,
      rings: [ring("a", 67, 72), ring("b", 72, 82)],
      total_thickness_mm: 6,
    });
    expect(reasons.find(({ code }) => code === "rings_close")?.parameters).toEqual({
      rings: [
        { id: "a", from_mm: 67, to_mm: 72 },
        { id: "b", from_mm: 72, to_mm: 82 },
      ],
      thickness_mm: 6,
    });
    expect(procedure[0].code).toBe("chain_assemble");
  });

  it("that are missing are an answer: which one to buy, and that one owned goes the other way round", () => {
    const changes = { filter_thread_mm: 77, rings: [ring("x", 77, 67)] };
    const { ring_chain, verdict, vignetting } = mounted(changes);
    expect(ring_chain).toMatchObject({ closes: false, rings: [], buy_from_mm: 67, buy_to_mm: 77 });
    expect(verdict).toBe("fits_with_care");
    expect(vignetting!.grade).toBe("clear");
    expect(codes(changes)).toEqual(expect.arrayContaining(["rings_missing", "rings_wrong_way"]));
  });

  it("that narrow on the way are taken for want of better, with the better one named", () => {
    const changes = { filter_thread_mm: 77, rings: [ring("down", 67, 62), ring("up", 62, 77)] };
    expect(mounted(changes).ring_chain).toMatchObject({ closes: true, buy_from_mm: 67, buy_to_mm: 77 });
    expect(codes(changes)).toContain("rings_narrow");
  });

  it("that step down to a smaller filter ask for care", () => {
    const changes = { filter_thread_mm: 62, rings: [ring("down", 67, 62, 2)] };
    expect(mounted(changes).verdict).toBe("fits_with_care");
    expect(codes(changes)).toContain("rings_step_down");
  });

  it("that cut the corners off give way to the thinner chain, and that to one ring to buy", () => {
    const tower = ring("tower", 67, 77, 40);
    const thin = [ring("a", 67, 72, 2), ring("b", 72, 77, 2)];
    expect(mounted({ filter_thread_mm: 77, rings: [tower, ...thin] }).ring_chain!.rings).toEqual(thin);
    const alone = { filter_thread_mm: 77, rings: [tower] };
    expect(mounted(alone).ring_chain).toMatchObject({ closes: false, buy_from_mm: 67, buy_to_mm: 77 });
    expect(codes(alone)).toContain("rings_too_thick");
  });

  it("are not needed for a filter of the same thread, which is assumed where none is given", () => {
    expect(codes({ filter_thread_mm: 67 })).toContain("rings_not_needed");
    const scene = sceneOf({ focal_length_mm: 24, lens_thread_mm: 67 }, "filter_thread_mm");
    expect(filterMounting(scene).reasons.map(({ code }) => code)).toContain("rings_filter_thread_assumed");
  });
});

describe("the ways from a thread to the filter, in the order in which they are tried", () => {
  const ways = (rings: ReturnType<typeof ring>[], filter_thread_mm = 77, from_mm = 67) =>
    ringsFrom(from_mm, sceneOf({ filter_thread_mm, rings }));
  const idsOf = ({ chain, mounted }: ReturnType<typeof ringsFrom>[number]) => [
    chain.closes,
    mounted.map(({ id }) => id),
  ];
  const said = ({ faults, reasons }: ReturnType<typeof ringsFrom>[number]) =>
    [...faults, ...reasons].map(({ code, basis }) => `${code} ${basis}`);

  it("are the fewest rings, the thinnest where these are others, and one to buy of 3 mm", () => {
    const tower = ring("tower", 67, 77, 40);
    const thin = [ring("a", 67, 72, 2), ring("b", 72, 77, 2)];
    const all = ways([tower, ...thin]);
    expect(all.map(idsOf)).toEqual([
      [true, ["tower"]],
      [true, ["a", "b"]],
      [false, ["to buy"]],
    ]);
    expect(all.map(said)).toEqual([
      ["rings_close computed"],
      ["rings_close computed"],
      ["rings_too_thick computed"],
    ]);
    expect(all[2].mounted).toEqual([{ id: "to buy", from_mm: 67, to_mm: 77, thickness_mm: 3 }]);
    expect(ways([tower]).map(idsOf)).toEqual([
      [true, ["tower"]],
      [false, ["to buy"]],
    ]);
  });

  it("are one where none is needed, or where none is owned that leads there", () => {
    const none = ways([ring("a", 67, 77)], 67);
    expect(none.map(idsOf)).toEqual([[true, []]]);
    expect(none.map(said)).toEqual([["rings_not_needed computed"]]);
    const { filter_thread_mm: _, ...unknown } = sceneOf({});
    const assumed = ringsFrom(77, unknown);
    expect(assumed.map(said)).toEqual([["rings_filter_thread_assumed common_practice"]]);
    expect(assumed[0].chain).toMatchObject({ from_mm: 77, to_mm: 77 });
    const missing = ways([ring("a", 67, 72)]);
    expect(missing.map(idsOf)).toEqual([[false, ["to buy"]]]);
    expect(missing.map(said)).toEqual([["rings_missing computed"]]);
  });

  it("say that a ring is turned only of one that leads from the filter's thread to this one", () => {
    expect(said(ways([ring("x", 77, 67)])[0])).toEqual([
      "rings_missing computed",
      "rings_wrong_way computed",
    ]);
    for (const other of [ring("x", 77, 72), ring("x", 82, 67), ring("x", 52, 58)])
      expect(said(ways([other])[0])).toEqual(["rings_missing computed"]);
  });

  it("ask for care where they narrow on the way, or step down to the filter", () => {
    const narrow = ways([ring("down", 67, 62), ring("up", 62, 77)])[0];
    expect(said(narrow)).toEqual(["rings_narrow computed", "rings_close computed"]);
    expect(narrow.faults[0].parameters).toEqual({ narrowest_mm: 62, from_mm: 67, to_mm: 77 });
    const down = ways([ring("down", 67, 62)], 62)[0];
    expect(said(down)).toEqual(["rings_step_down computed", "rings_close computed"]);
    expect(down.chain).not.toHaveProperty("buy_from_mm");
  });
});

it("two rings of one id are refused, and no others", () => {
  expect(() => checkRingIds([ring("a", 67, 77), ring("b", 67, 77)])).not.toThrow();
  expect(() => checkRingIds([ring("a", 67, 77), ring("b", 52, 58), ring("a", 72, 77)])).toThrow(SceneProblem);
});
