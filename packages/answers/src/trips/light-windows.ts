import { type LightWindowsRequest, mostWindowDays, windowLength_min } from "@sunfathom/contract";
import {
  type LightWindowsResult,
  lightWindows,
  MODEL_VERSION,
  type Scene,
  type WindowsPlan,
} from "@sunfathom/planner";
import type { TextUnits } from "@sunfathom/words";
import type { Refused } from "../operations/outcome.js";
import { otherModel } from "../problem/other-model.js";
import { invalidRequest } from "../problem/problem.js";
import { sayParts, sayReason } from "../say/say-parts.js";
import { shapeOf } from "../shape/shape.js";
import { checkOf } from "../validate/checker.js";
import { Findings } from "../validate/findings.js";
import { topLevelName } from "../validate/pointer.js";
import { checkDate, daysBetween, minutesOf } from "./dates.js";
import type { ReadyTrip, TripTongue, WindowsSize } from "./ready.js";
import { checkSite, siteTold, within } from "./site.js";

/** A sun that stands for all until windows are looked at: any one that the model holds for. */
const anySun = { daylight_basis: "sun", sun_elevation_deg: 45, cloud_oktas: 0 } as const;
/** Fields of a plan, so that a refusal of one of them is not looked for in the site. */
const ofPlan = new Set(["time_zone", "first_date", "opens_at"]);

/** Heights of the sun at which the model is asked, and skies that there are: what is met at most. */
const mostHeights = 16;
const moments_min = 10;

/** Checks what light windows are asked for, and leaves the computing for later. */
export function lightWindowsReady(raw: unknown, tongue: TripTongue): ReadyTrip<WindowsSize> | Refused {
  const { problems } = tongue;
  const refuse = (findings: Findings): Refused => ({
    status: "problem",
    problem: invalidRequest(findings, problems),
  });
  const findings = new Findings();
  checkOf("LightWindowsRequest")(raw, "", findings);
  if (!findings.more && !findings.pointers.includes("")) checkParts(raw as LightWindowsRequest, findings);
  if (!findings.none) return refuse(findings);
  const request = raw as LightWindowsRequest;
  const { expect_model_version: expected = MODEL_VERSION, units = "metric" } = request;
  if (expected !== MODEL_VERSION)
    return { status: "problem", problem: otherModel({ expected, is: MODEL_VERSION }, problems) };
  const site = tongue.prepare("filter-choice", { ...request.site, ...anySun });
  if (site.status === "problem") return { status: "problem", problem: within("/site", site, problems) };
  // The calculation whose kind of scene it is has checked it, and brought it into the planner's form.
  const plan = planOf(request, site.scene as Scene);
  if (plan.aim === "lamps_lead" && plan.scene.lamps.length === 0) {
    findings.add(() => ({ pointer: "/aim", code: "aim_needs_lamps", parameters: {} }));
    return refuse(findings);
  }
  const told = siteTold(site);
  const { scene: _, ...asked } = plan;
  return {
    status: "ready",
    canonical: JSON.stringify([units, told, asked]),
    units,
    scene: plan.scene,
    size: sizeOf(plan),
    compute: () => {
      try {
        return { status: "ok", body: say(lightWindows(plan), told, tongue, units) };
      } catch (error) {
        const refused = site.refuse(error);
        const [first] = refused.problem.errors ?? [];
        return ofPlan.has(topLevelName(first?.pointer ?? "") ?? "")
          ? refused
          : { status: "problem", problem: within("/site", refused, problems) };
      }
    },
  };
}

/** In its one form: what means the same comes out the same. */
function planOf(request: LightWindowsRequest, scene: Scene): WindowsPlan {
  const { latitude_deg, longitude_deg, time_zone, first_date, opens_at, closes_at } = request;
  const { last_date = first_date, window_min = windowLength_min.usual, aim = "natural_colour" } = request;
  const forecast = (request.forecast ?? []).map(({ date, hour, cloud_oktas }) =>
    hour === undefined ? { date, cloud_oktas } : { date, hour, cloud_oktas },
  );
  const keyOf = ({ date, hour = -1 }: { date: string; hour?: number }) =>
    `${date} ${String(hour + 1).padStart(2, "0")}`;
  forecast.sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
  return {
    scene,
    latitude_deg,
    longitude_deg,
    time_zone,
    first_date,
    last_date,
    opens_at,
    closes_at,
    window_min,
    aim,
    forecast,
  };
}

/** Windows of a day that no clock change bears on, for all days. */
const windowsOf = ({ first_date, last_date, opens_at, closes_at, window_min }: WindowsPlan): number =>
  daysBetween(first_date, last_date) * Math.floor((minutesOf(closes_at) - minutesOf(opens_at)) / window_min);

function sizeOf(plan: WindowsPlan): WindowsSize {
  const skies = new Set([...plan.forecast.map(({ cloud_oktas }) => cloud_oktas), 0]).size;
  const windows = windowsOf(plan);
  const moments = windows * Math.ceil(plan.window_min / moments_min);
  return { states: Math.min(skies * mostHeights, 2 * moments), searches: skies === 1 ? 2 : 4, moments };
}

/** What goes wrong between the parts of a plan; not asked of parts that are not well formed themselves. */
function checkParts(request: LightWindowsRequest, findings: Findings): void {
  const troubled = new Set(findings.pointers.map(topLevelName));
  const isWell = (...names: string[]) => names.every((name) => !troubled.has(name));
  if (isWell("site")) checkSite(request.site, "/site", findings);
  if (isWell("first_date", "last_date")) checkDates(request, findings);
  if (isWell("opens_at", "closes_at", "window_min")) {
    const { opens_at, closes_at, window_min: least_min = windowLength_min.usual } = request;
    if (minutesOf(closes_at) - minutesOf(opens_at) < least_min) {
      const parameters = { opens_at, closes_at, least_min };
      findings.add(() => ({ pointer: "/closes_at", code: "opening_in_order", parameters }));
    }
  }
  if (isWell("forecast")) checkForecast(request, findings);
}

function checkDates({ first_date: first, last_date: last }: LightWindowsRequest, findings: Findings): void {
  const areDays = [
    checkDate(first, "/first_date", findings),
    last === undefined || checkDate(last, "/last_date", findings),
  ];
  if (last === undefined || areDays.includes(false)) return;
  const days = daysBetween(first, last);
  if (days < 1)
    findings.add(() => ({ pointer: "/last_date", code: "dates_in_order", parameters: { first, last } }));
  else if (days > mostWindowDays) {
    const parameters = { days, most: mostWindowDays };
    findings.add(() => ({ pointer: "/last_date", code: "dates_at_most", parameters }));
  }
}

function checkForecast({ forecast = [] }: LightWindowsRequest, findings: Findings): void {
  const firsts = new Map<string, string>();
  for (const [nth, { date, hour }] of forecast.entries()) {
    const pointer = `/forecast/${nth}`;
    if (!checkDate(date, `${pointer}/date`, findings)) continue;
    const key = `${date} ${hour ?? ""}`;
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, pointer);
    else findings.add(() => ({ pointer, code: "forecast_once", parameters: { date, first } }));
  }
}

const shape = () => shapeOf("LightWindowsAnswer");

/** The answer in words, in its form. */
function say(
  result: LightWindowsResult,
  site: object,
  { words, trips }: TripTongue,
  units: TextUnits,
): object {
  const { causes, cautions } = words["filter-choice"];
  const reasons = trips.light_windows;
  const { sources, days, ...said } = sayParts(result, { reasons, causes, cautions }, units);
  return shape()({
    site,
    ...said,
    days: days.map(({ windows, ...day }) => ({
      ...day,
      windows: windows.map(({ reason, ...window }) => ({
        ...window,
        reason: sayReason(reason, reasons, units),
      })),
    })),
    model: { version: MODEL_VERSION, sources },
  }) as object;
}
