// Filters that are known by pictures of a card, against simulated ones: true curves that differ from the nominal, photographed with
// the noise that the fit expects.

import { OUTER_REEF_MORNING } from "@sunfathom/fixtures/scenes";
import { channelStops, type FilterKind, type FilterShape, filterTransmittance } from "@sunfathom/optics";
import { describe, expect, it } from "vitest";
import { normalFrom } from "../../../optics/src/random.test-support.js";
import { budgetAt } from "../exposure-loss/budget.js";
import type { Estimate } from "../result/common.js";
import { filterCausesOf } from "../uncertainty/causes.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import { propagate } from "../uncertainty/propagate.js";
import { conditionsOf } from "./conditions.js";
import { fittedFilter } from "./fitted-filter.js";
import { lensFilterOf } from "./lens-filter.js";
import { underwater } from "./underwater.js";

const conditions = conditionsOf(OUTER_REEF_MORNING);
const world = underwater(conditions, NOMINAL);
const DEPTH_M = 10;
const CARD_NOISE_STOPS = 0.05;

/** Stops that a filter costs the meter at depth. */
const costAt = (filter: ReturnType<typeof filterTransmittance>): number =>
  budgetAt(world, lensFilterOf({ filter_change_underwater: "none" }, NOMINAL), DEPTH_M).ev100 -
  budgetAt(world, filter, DEPTH_M).ev100;

function simulated(normal: () => number, kind: FilterKind) {
  const shape: FilterShape = { shift_nm: 8 * normal(), widthScale: Math.exp(0.25 * normal()) };
  const density = 0.7 + 0.2 * normal();
  const truth = filterTransmittance(kind, Math.max(0.2, density), shape);
  const [r, g, b] = channelStops(truth);
  const noise = () => CARD_NOISE_STOPS * normal();
  const fit = fittedFilter([r + noise(), g + noise(), b + noise()], {});
  const { filter_kind, filter_density, density_standard_error, residual_stops } = fit;
  const filter = {
    ...{ filter_kind, filter_density, filter_change_underwater: "none" as const },
    filter_fits: [{ density_standard_error, residual_stops }],
  };
  const { estimates } = propagate(
    (nuisance) => ({ cost: costAt(lensFilterOf(filter, nuisance)) }),
    filterCausesOf(filter).filter(({ code }) => code !== "full_well"),
  );
  const { cost: asNominal } = propagate(
    (nuisance) => ({ cost: costAt(lensFilterOf({ ...filter, filter_fits: [] }, nuisance)) }),
    filterCausesOf({}).filter(({ code }) => code !== "full_well"),
  ).estimates;
  return { truth: costAt(truth), cost: estimates.cost, asNominal };
}

describe.each(["red", "magenta"] as const)("a %s filter that was photographed with a card", (kind) => {
  const normal = normalFrom(kind === "red" ? 11 : 12);
  const all = Array.from({ length: 1000 }, () => simulated(normal, kind));

  const share = (of: (draw: (typeof all)[number]) => Estimate): number =>
    all.filter((draw) => draw.truth >= of(draw).low && draw.truth <= of(draw).high).length / all.length;

  it("has a cost under water within its 80 % interval about as often as that says", () => {
    const held = share(({ cost }) => cost);
    expect(held).toBeGreaterThan(0.75);
    expect(held).toBeLessThan(0.9);
    // As if its label alone were known, what its curve might be would count in full.
    expect(Math.abs(held - 0.8)).toBeLessThan(Math.abs(share(({ asNominal }) => asNominal) - 0.8));
  });
});
