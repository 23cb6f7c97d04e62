// Held against the calculations of one scene: what they say of a guest alone must be what a trip says of the guest.
import { describe, expect, it } from "vitest";
import { diveAdvice } from "../dive-advice/dive-advice.js";
import { filterChoice } from "../filter-choice/filter-choice.js";
import { filterMounting } from "../filter-mounting/filter-mounting.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { filmedBy } from "./light.js";
import { tripAdvice } from "./trip-advice.js";
import { TripProblem } from "./trip-problem.js";
import { dive, guest, narrow, piece, trip } from "./trips.test-support.js";

const usedIn = (plan: Parameters<typeof tripAdvice>[0]) =>
  tripAdvice(plan).dives.map(({ plans }) => plans.map(({ piece: used }) => used?.piece_id));

describe("one guest alone", () => {
  const kit = [
    piece("weak", { filter_density: 0.3 }),
    piece("right"),
    piece("magenta", { filter_kind: "magenta" }),
  ];
  // At one depth: over a range a trip looks at three depths, and a choice at seven.
  const at = dive("d1", "2027-01-16T09:30", { min_depth_m: 12, max_depth_m: 12 });
  const plan = trip({
    dives: [at],
    guests: [guest("g1")],
    shelf: kit.map((one) => ({ ...one, quantity: 1 })),
  });
  const scene = { ...filmedBy(at, guest("g1").camera), kit };

  it("mounts what filter-choice advises of the same kit, with the same colour error", () => {
    const chosen = filterChoice(scene);
    const [first] = tripAdvice(plan).dives[0]?.plans ?? [];
    expect(chosen.filter_id).toBe("right");
    expect(first?.piece?.piece_id).toBe(chosen.filter_id);
    expect(first?.colour_error_delta_e00?.likely).toBeCloseTo(chosen.colour_error_delta_e00.likely, 6);
    const without = chosen.colour_error_without_delta_e00.likely;
    expect(first?.gains_delta_e00).toBeCloseTo(without - chosen.colour_error_delta_e00.likely, 6);
    expect(first?.colour_error_delta_e00?.low).toBeCloseTo(chosen.colour_error_delta_e00.low, 6);
    expect(first?.colour_error_delta_e00?.high).toBeCloseTo(chosen.colour_error_delta_e00.high, 6);
  });

  it("sets and balances over a range as dive-advice does", () => {
    const range = dive("d1", "2027-01-16T09:30");
    const whole = diveAdvice({ ...filmedBy(range, guest("g1").camera), kit: [piece("right")] });
    const said = tripAdvice(
      trip({ dives: [range], guests: [guest("g1")], shelf: [{ ...piece("right"), quantity: 1 }] }),
    );
    const [own] = said.dives[0]?.plans ?? [];
    const exposed = whole.summary.find(({ code }) => code === "expose")?.parameters as {
      from: { iso: number; f_number: number };
      to: { iso: number; f_number: number };
    };
    for (const [n, end] of [exposed.from, exposed.to].entries()) {
      expect(own?.settings[n]?.iso).toBeCloseTo(end.iso, 6);
      expect(own?.settings[n]?.f_number).toBeCloseTo(end.f_number, 6);
    }
    const balance = own?.plan.find(({ code }) => code === "balance");
    expect(balance?.parameters).toEqual({ again: whole.balance_depths_descending_m.length - 1 });
  });

  it("keeps what it owns where nobody could tell the shelf's from it", () => {
    const own = guest("g1", { kit: [piece("mine")] });
    const [plans = []] = usedIn(trip({ guests: [own] }));
    expect(plans).toEqual(["mine"]);
    const bare = trip({ guests: [guest("g1", { kit: [piece("mine", { filter_density: 0.1 })] })] });
    expect(usedIn(bare)[0]).toEqual(["red-67"]);
  });
});

describe("a shelf", () => {
  it("goes to who is worst off without it, whatever the order of guests and pieces", () => {
    // The less sensitive camera has more noise, and so the larger colour error.
    const noisy = guest("a noisy one", { camera: { ...guest("").camera, camera_class: "phone" } });
    const plain = guest("z plain one");
    const plan = trip({ guests: [plain, noisy] });
    const result = tripAdvice(plan);
    const errors = result.dives[0]?.plans.map(
      ({ colour_error_delta_e00: error, gains_delta_e00: gains = 0 }) =>
        error === undefined ? 0 : error.likely + gains,
    );
    const worst = (errors?.[0] ?? 0) > (errors?.[1] ?? 0) ? 0 : 1;
    expect(result.dives[0]?.plans[worst]?.piece?.piece_id).toBe("red-67");
    expect(result.dives[0]?.plans[1 - worst]?.piece).toBeUndefined();
    const turned = tripAdvice({ ...plan, guests: [noisy, plain] });
    expect([...(turned.dives[0]?.plans ?? [])].reverse()).toEqual(result.dives[0]?.plans);
    expect(result.reasons.find(({ code }) => code === "trip_shelf_short")?.parameters).toEqual({ times: 1 });
  });

  it("goes by ids where all is even, and anew on each dive", () => {
    const dives = [dive("d1", "2027-01-16T09:30"), dive("d2", "2027-01-16T14:00")];
    const plan = trip({ dives, guests: [guest("b"), guest("a")] });
    expect(usedIn(plan)).toEqual([
      [undefined, "red-67"],
      [undefined, "red-67"],
    ]);
    const { crates, packing } = tripAdvice({ ...plan, shelf: [{ ...piece("red-67"), quantity: 3 }] });
    expect(crates.map(({ pieces }) => pieces.map(({ dive_ids }) => dive_ids))).toEqual([
      [["d1", "d2"]],
      [["d1", "d2"]],
    ]);
    expect(packing.pieces).toEqual([{ piece_id: "red-67", quantity: 2 }]);
    expect(packing.not_needed).toEqual([{ piece_id: "red-67", quantity: 1 }]);
  });

  it("stays ashore at night, and where no filter is worth it", () => {
    const night = dive("d1", "2027-01-16T23:30");
    const dark = tripAdvice(trip({ dives: [night] }));
    expect(dark.dives[0]?.plans.map(({ plan }) => plan.map(({ code }) => code))).toEqual([
      ["trip_without_daylight"],
      ["trip_without_daylight"],
    ]);
    const codes = dark.cautions.map(({ code }) => code);
    expect(codes).toContain("overhead_by_training");
    expect(codes).toContain("batteries_by_maker");
    expect(
      usedIn(trip({ shelf: [{ ...piece("far too weak", { filter_density: 0.01 }), quantity: 9 }] }))[0],
    ).toEqual([undefined, undefined]);
  });
});

describe("what fits", () => {
  const ring = { id: "52-67", from_mm: 52, to_mm: 67, thickness_mm: 3 };
  const behind = guest("g1", { mount: narrow });
  const mounting = (rings: FilterMountingScene["rings"]) =>
    filterMounting({
      ...narrow,
      filter_thread_mm: 67,
      filter_thickness_mm: 5,
      filter_material: "glass",
      sheet_thickness_mm: 0.1,
      sheet_refractive_index: 1.5,
      f_number: 22,
      filter_change_underwater: "none",
      rings,
    });

  it("is what filter-mounting says, with rings of the guest's before the shop's", () => {
    expect(mounting([ring]).holder).toBe("screw_on_lens");
    const both = trip({ guests: [{ ...behind, rings: [ring] }], rings: [{ ...ring, quantity: 1 }] });
    expect(tripAdvice(both).dives[0]?.plans[0]?.piece).toMatchObject({
      holder: "screw_on_lens",
      rings: [{ ring_id: "52-67", from: "own" }],
    });
    const shared = tripAdvice(trip({ guests: [behind], rings: [{ ...ring, quantity: 1 }] }));
    expect(shared.dives[0]?.plans[0]?.piece?.rings).toEqual([{ ring_id: "52-67", from: "shelf" }]);
    expect(shared.packing.rings).toEqual([{ ring_id: "52-67", quantity: 1, short_by: 0 }]);
  });

  it("names the ring with which something would, and the rings that are too few", () => {
    expect(mounting([]).ring_chain?.closes).toBe(false);
    const lacking = tripAdvice(trip({ guests: [behind] }));
    expect(lacking.dives[0]?.plans[0]?.piece).toBeUndefined();
    expect(lacking.packing.rings_to_get).toEqual([{ from_mm: 52, to_mm: 67, guest_ids: ["g1"] }]);
    expect(lacking.reasons.find(({ code }) => code === "trip_nothing_fits")?.parameters).toEqual({
      guests: ["g1"],
    });
    const two = trip({
      guests: [behind, { ...behind, id: "g2" }],
      shelf: [{ ...piece("red-67"), quantity: 2 }],
      rings: [{ ...ring, quantity: 1 }],
    });
    expect(tripAdvice(two).packing.rings).toEqual([{ ring_id: "52-67", quantity: 2, short_by: 1 }]);
  });

  it("is no sheet for who has a thread, and no round filter behind a lens", () => {
    const sheet = { ...piece("sheet", { holder: "rear_sheet" }), quantity: 1 };
    const { filter_thread_mm: _, ...threadless } = sheet;
    expect(usedIn(trip({ shelf: [threadless] }))[0]).toEqual([undefined, undefined]);
  });
});

describe("what the model cannot answer for is told by its place", () => {
  const placeOf = (plan: Parameters<typeof tripAdvice>[0]) => {
    try {
      tripAdvice(plan);
    } catch (error) {
      if (error instanceof TripProblem)
        return { ...error.place, code: error.problem.code, field: error.problem.field };
      throw error;
    }
    return undefined;
  };

  it.each([
    ["a time that a clock change skips", dive("d2", "2026-03-29T02:30"), "Europe/Rome", "local_time_skipped"],
    ["a day that there is not", dive("d2", "2027-02-31T09:30"), "Etc/GMT+9", "local_time_malformed"],
    ["a zone that nobody knows", dive("d2", "2027-01-16T09:30"), "Mars/Olympus", "time_zone_unknown"],
  ])("%s", (_, wrong, time_zone, code) => {
    const first = dive("d1", "2027-01-16T09:30");
    const place = placeOf(trip({ dives: [first, { ...wrong, time_zone }] }));
    expect(place).toMatchObject({ dive: 1, code });
  });

  it("a sun that stands too low", () => {
    const dusk = dive("d1", "2027-01-16T20:00");
    expect(placeOf(trip({ dives: [dusk] }))).toMatchObject({ dive: 0, code: "sun_too_low" });
  });

  it("a filter that lets nothing through", () => {
    const black = { ...piece("black"), quantity: 1 };
    const { filter_kind: _, filter_density: __, ...measured } = black;
    const opaque = {
      ...measured,
      filter_transmittance: [
        { wavelength_nm: 400, transmittance: 0 },
        { wavelength_nm: 700, transmittance: 0 },
      ],
    };
    const shelf = [{ ...piece("red-67"), quantity: 1 }, opaque];
    expect(placeOf(trip({ shelf }))).toMatchObject({ piece: { from: "shelf", at: 1 }, code: "no_light" });
  });

  it("and not what is the program's own fault", () => {
    expect(
      new TripProblem(new SceneProblem({ code: "filter_opaque", parameters: { case: "kit" } }, "kit"), {})
        .message,
    ).toContain("filter_opaque");
  });
});
