/** Site-days drawn at random, and what single scenes make of them. Tests only. */
import { daylightScene, TWO_LAMPS } from "@sunfathom/fixtures/scenes";
import { candidatesFor } from "../filter-choice/candidates.js";
import { judge, mayFilterGain, rangeError } from "../filter-choice/merits.js";
import { whereRedIsGone } from "../filter-choice/red-is-gone.js";
import { conditionsOf } from "../light/conditions.js";
import { mapEach, nonEmpty } from "../lists/non-empty.js";
import type { Scene } from "../scene/scene.js";
import { NOMINAL } from "../uncertainty/nuisance.js";
import type { DayWindow } from "./days.js";
import { AIMS, windowCost } from "./objective.js";
import type { CloudForecast, WindowsPlan } from "./plan.js";
import { depthsOfWindows, SunStates } from "./sun-states.js";

/** Numbers from 0 to 1, the same for each seed, and alike for no two: splitmix32, after Steele, Lea & Flood (2014). */
function drawsFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

const WATERS = ["I", "IB", "II", "III", "1C", "3C", "5C", "7C"] as const;

/** One day at one site, with a sky that changes by the hour. */
export function siteDay(seed: number): WindowsPlan {
  const draw = drawsFrom(Math.imul(seed, 0x85ebca6b));
  const of = <T>(options: readonly T[]): T => options[Math.floor(draw() * options.length)] as T;
  const whole = (from: number, to: number) => from + Math.floor(draw() * (to - from + 1));
  const min_depth_m = whole(1, 12);
  const aim = of(AIMS);
  const scene: Scene = {
    ...daylightScene(of(WATERS), 45, min_depth_m, min_depth_m + whole(0, 10)),
    finish: of(["in_camera", "basic_edit", "matched"] as const),
    lamps: aim === "lamps_lead" || draw() < 0.2 ? [TWO_LAMPS] : [],
  };
  const date = `2027-${String(whole(1, 12)).padStart(2, "0")}-${String(whole(1, 28)).padStart(2, "0")}`;
  const forecast = Array.from(
    { length: 24 },
    (_, hour): CloudForecast => ({ date, hour, cloud_oktas: whole(0, 8) }),
  );
  return {
    scene,
    latitude_deg: whole(-45, 45),
    longitude_deg: -135 + whole(-7, 7),
    time_zone: "Etc/GMT+9",
    first_date: date,
    last_date: date,
    opens_at: "07:00",
    closes_at: "18:00",
    window_min: 60,
    aim,
    forecast: draw() < 0.5 ? forecast : forecast.slice(0, 1).map(({ hour: _, ...day }) => day),
  };
}

/**
 * What a window costs by single scenes: one at each moment, by place and time, with every filter of the grid tried, and neither the
 * sun's heights nor the filters narrowed down.
 */
export function costBySingles(plan: WindowsPlan, { from_ms, to_ms, moments }: DayWindow): number {
  const depths = depthsOfWindows(plan.scene);
  const candidates = candidatesFor(plan.scene);
  const states = new SunStates(plan.scene, plan.aim, [candidates[0]]);
  const sums = candidates.map(() => 0);
  let light = 0;
  for (const [k, moment] of moments.entries()) {
    const at = new Date(from_ms + ((k + 0.5) / moments.length) * (to_ms - from_ms));
    const conditions = conditionsOf({
      ...plan.scene,
      daylight_basis: "place_time",
      latitude_deg: plan.latitude_deg,
      longitude_deg: plan.longitude_deg,
      time: at.toISOString(),
      cloud_oktas: moment.cloud_oktas,
    });
    const judged = nonEmpty(judge(conditions, NOMINAL, depths, candidates), "candidates");
    const comparison = {
      without: judged[0],
      redIsGone: whereRedIsGone(conditions, depths, judged),
      mayGain: mayFilterGain(conditions),
      changeable: false,
    };
    for (const [i, error] of mapEach(judged, (one) => rangeError(one, comparison)).entries())
      sums[i] = (sums[i] ?? 0) + error / moments.length;
    light += states.exactlyAt(moment).light_stops / moments.length;
  }
  return windowCost(plan.aim, Math.min(...sums), light);
}
