import { limitsOf, settingsFor } from "../camera/exposure-settings.js";
import { cautionsFor, filterAdvice } from "../cautions/cautions-for.js";
import { checkpoint } from "../checkpoint.js";
import { reasonsOf } from "../codes/coded.js";
import type { LightWindowReasons } from "../codes/light-windows.js";
import { described } from "../filter-choice/choose.js";
import { lightSources } from "../light/sources.js";
import { itemAt, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { Estimate } from "../result/common.js";
import type { LightWindowsResult, RankedWindow } from "../result/light-windows.js";
import { SceneProblem } from "../scene/scene-problem.js";
import { causesOf, FILTER_CAUSES } from "../uncertainty/causes.js";
import { type Propagated, propagate, shareOfCauses } from "../uncertainty/propagate.js";
import { type Day, type DayWindow, daysOf } from "./days.js";
import { WEIGHT_PER_STOP } from "./objective.js";
import type { WindowsPlan } from "./plan.js";
import { isSunny, type JudgedWindow, judgeWindow, ranked } from "./rank.js";
import { LOWEST_SUN_DEG, type SunInSky, SunStates, shortlist } from "./sun-states.js";

const reason = reasonsOf<LightWindowReasons>();

/** Windows of a day that are listed. */
const LISTED = 3;
/** Costs nearer than this nobody tells apart: less than what drawing between heights is off by, and what a forecast is. A judgement. */
const AS_GOOD_PERCENT = 2;
/** How far what is drawn between heights may be off, as the tests hold it. */
export const DRAWN_WITHIN = { delta_e00: 0.15, stops: 0.1 };

const SOURCES = [
  "filter_shapes",
  "filter_merit",
  "chart_24",
  "ciede2000",
  "camera_recording",
  "port_radiance",
];

/** Spread of the main figures around those of one window. */
interface Spread {
  error: number;
  level: number;
  red: number;
}

/** What was found before it is told. */
export interface FoundWindows {
  days: { day: Day; ranked: JudgedWindow[] }[];
  states: SunStates;
  forecast_unused: number;
}

/** The suns and skies between which all windows lie. */
function cornersOf(windows: readonly DayWindow[]): SunInSky[] {
  const moments = windows.flatMap((window) => window.moments);
  const of = (pick: (...values: number[]) => number, name: keyof SunInSky): number =>
    moments.reduce((found, moment) => pick(found, moment[name]), itemAt(moments, 0)[name]);
  const heights = [of(Math.min, "elevation_deg"), of(Math.max, "elevation_deg")];
  const skies = [of(Math.min, "cloud_oktas"), of(Math.max, "cloud_oktas")];
  const all = heights.flatMap((elevation_deg) =>
    skies.map((cloud_oktas) => ({ elevation_deg, cloud_oktas })),
  );
  return all.filter(
    (one, i) =>
      all.findIndex(
        (other) => other.elevation_deg === one.elevation_deg && other.cloud_oktas === one.cloud_oktas,
      ) === i,
  );
}

/**
 * The windows of every day, best first.
 * @throws SceneProblem for a place, zone or water that the model cannot answer for, and where no window has enough sun
 */
export function findWindows(plan: WindowsPlan): FoundWindows {
  const { days, forecast_unused } = daysOf(plan);
  const sunny = days.flatMap(({ windows }) => windows.filter(isSunny));
  if (sunny.length === 0) throw noSun(plan, days);
  const states = new SunStates(plan.scene, plan.aim, shortlist(plan.scene, cornersOf(sunny)));
  return {
    states,
    forecast_unused,
    days: days.map((day) => {
      checkpoint();
      return {
        day,
        ranked: ranked(day.windows.filter(isSunny).map((window) => judgeWindow(states, window))),
      };
    }),
  };
}

/** Why there is no window at all. */
function noSun({ opens_at, first_date, time_zone }: WindowsPlan, days: readonly Day[]): SceneProblem {
  const lowest = days.flatMap(({ windows }) =>
    windows.map(({ moments }) => Math.min(...moments.map(({ elevation_deg }) => elevation_deg))),
  );
  // Clocks leapt over the whole of the opening hours.
  if (lowest.length === 0)
    return new SceneProblem(
      { code: "local_time_skipped", parameters: { local_time: `${first_date}T${opens_at}`, time_zone } },
      "opens_at",
    );
  const elevation_deg = Number(Math.max(...lowest).toFixed(1));
  return new SceneProblem(
    { code: "sun_too_low", parameters: { elevation_deg, min_elevation_deg: LOWEST_SUN_DEG } },
    "opens_at",
  );
}

/**
 * When the light of a site is best, day by day.
 * @throws SceneProblem for a place, zone or water that the model cannot answer for, and where no window has enough sun
 */
export function lightWindows(plan: WindowsPlan): LightWindowsResult {
  const found = findWindows(plan);
  const { states, days } = found;
  const [best] = nonEmpty(ranked(days.flatMap((day) => day.ranked.slice(0, 1))), "windows");
  const conditions = states.conditionsAt(best);
  const propagated = spreadAt(states, best);
  const uncertainty = shareOfCauses(propagated, ({ error }) => error);
  const told = days.map(({ day, ranked: all }) => ({
    date: day.date,
    windows_behind: Math.max(0, all.length - LISTED),
    windows_without_sun: day.windows.length - all.length,
    windows: all
      .slice(0, LISTED)
      .map((one) => tell(one, { states, first: itemAt(all, 0), best, of: all.length, propagated })),
  }));
  const reasons = answerReasons(plan, found);
  const usesFilter = told.some(({ windows }) => windows.some(({ filter_kind }) => filter_kind !== "none"));
  const isLed = plan.aim === "lamps_lead";
  return {
    aim: plan.aim,
    weight_per_stop: WEIGHT_PER_STOP[plan.aim],
    best: { date: best.window.from_local_time.slice(0, 10), from_local_time: best.window.from_local_time },
    days: told,
    reasons,
    cautions: cautionsFor(plan.scene, {
      uncertainty,
      advises: [...(usesFilter ? [filterAdvice(plan.scene)] : []), ...(isLed ? (["light"] as const) : [])],
    }),
    uncertainty,
    sources: [...new Set([...lightSources(conditions), ...SOURCES])],
  };
}

/** How sure the figures of one window are. */
function spreadAt(
  states: SunStates,
  { elevation_deg, cloud_oktas, candidate }: JudgedWindow,
): Propagated<Spread> {
  const sun = { elevation_deg, cloud_oktas: Math.round(cloud_oktas) };
  const advised = itemAt(states.candidates, candidate);
  const few: NonEmpty<typeof advised> = candidate === 0 ? [advised] : [states.candidates[0], advised];
  const causes = [...causesOf(states.conditionsAt(sun)), ...FILTER_CAUSES];
  return propagate((nuisance): Spread => {
    const { errors, level, red_loss_stops } = states.exactlyAt(sun, nuisance, few);
    return {
      error: itemAt(errors, few.length - 1),
      level: level + Math.log2(nuisance.daylightScale),
      red: red_loss_stops,
    };
  }, causes);
}

/** An estimate around another middle, as far from it in proportion. */
const inProportion = ({ low, likely, high }: Estimate, around: number): Estimate =>
  likely > 0
    ? { low: Math.max(0, (around * low) / likely), likely: around, high: (around * high) / likely }
    : { low: around, likely: around, high: around };

/** As far from it in steps. */
const inSteps = ({ low, likely, high }: Estimate, around: number): Estimate => ({
  low: around + low - likely,
  likely: around,
  high: around + high - likely,
});

interface Beside {
  states: SunStates;
  /** First of its day, and of all days. */
  first: JudgedWindow;
  best: JudgedWindow;
  /** How many windows of its day are ranked. */
  of: number;
  propagated: Propagated<Spread>;
}

function tell(judged: JudgedWindow, beside: Beside): RankedWindow {
  const { states, first, best, propagated } = beside;
  const { window, figures, candidate, delta_e00, elevation_deg, cloud_oktas, cost } = judged;
  const chosen = itemAt(states.candidates, candidate);
  const sensitivity = itemAt(figures.sensitivities, candidate);
  const { iso, f_number, shutter_s, off_by_stops } = settingsFor(2 ** sensitivity, limitsOf(states.scene));
  const { error, level, red } = propagated.estimates;
  const levels = inSteps(level, figures.level);
  const losses = inSteps(red, figures.red_loss_stops);
  const costs_more_percent = 100 * (cost / first.cost - 1);
  const as_good = costs_more_percent <= AS_GOOD_PERCENT;
  return {
    from_local_time: window.from_local_time,
    to_local_time: window.to_local_time,
    from_time: new Date(window.from_ms).toISOString().replace(".000Z", "Z"),
    sun_elevation_deg: elevation_deg,
    cloud_oktas,
    cloud_basis: window.cloud_basis,
    illuminance_lx: { low: 2 ** levels.low, likely: 2 ** levels.likely, high: 2 ** levels.high },
    red_left_percent: {
      low: 100 * 2 ** -Math.max(0, losses.high),
      likely: 100 * 2 ** -losses.likely,
      high: 100 * 2 ** -Math.max(0, losses.low),
    },
    colour_error_delta_e00: inProportion(error, delta_e00),
    light_stops_over_best: figures.light_stops - best.figures.light_stops,
    costs_more_percent,
    as_good,
    filter_kind: chosen.kind,
    ...described(chosen),
    filter_gains_delta_e00: judged.gains_delta_e00,
    exposure_value_ev100: Math.log2(100) - sensitivity,
    iso,
    f_number,
    shutter_s,
    off_by_stops,
    reason: whyOf(judged, beside, as_good),
  };
}

function whyOf(judged: JudgedWindow, { first, of }: Beside, as_good: boolean): RankedWindow["reason"] {
  const { elevation_deg, cloud_oktas } = judged;
  if (judged === first)
    return reason(of === 1 ? "window_only" : "window_best", "computed", { elevation_deg, cloud_oktas });
  return reason(as_good ? "window_as_good" : "window_behind", "computed", {
    more_delta_e00: judged.delta_e00 - first.delta_e00,
    less_stops: first.figures.light_stops - judged.figures.light_stops,
  });
}

function answerReasons(
  plan: WindowsPlan,
  { days, forecast_unused: entries }: FoundWindows,
): LightWindowsResult["reasons"] {
  const all = days.map(({ day }) => day);
  const assumed = all.filter(({ windows }) =>
    windows.some(({ cloud_basis }) => cloud_basis === "assumed_clear"),
  );
  const tooLow = all.flatMap(({ windows }) => windows.filter((window) => !isSunny(window))).length;

  return [
    reason("windows_ranked", "judgement", {
      aim: plan.aim,
      percent_per_stop: 100 * (1 - 2 ** -WEIGHT_PER_STOP[plan.aim]),
    }),
    ...(assumed.length > 0
      ? [reason("windows_sky_assumed", "judgement", { days: assumed.length, of_days: all.length })]
      : []),
    ...(entries > 0 ? [reason("windows_forecast_unused", "computed", { entries })] : []),
    ...(tooLow > 0
      ? [reason("windows_sun_too_low", "computed", { windows: tooLow, min_elevation_deg: LOWEST_SUN_DEG })]
      : []),
    reason("windows_interpolated", "computed", DRAWN_WITHIN),
    reason("windows_spread_shared", "judgement"),
  ];
}
