/** The days of a plan, cut into windows, with the sun and the cloud of each. */
import { clockIn, localTimeToInstant, OpticsDomainError, sunPosition } from "@sunfathom/optics";
import { SceneProblem } from "../scene/scene-problem.js";
import type { CloudForecast, WindowsPlan } from "./plan.js";

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
/** Moments of a window lie this far apart, or a little less. */
const STEP_MIN = 10;
/** What a clock change leaps over is looked for in steps of this, as far as a whole day that a place left out. */
const LEAP_MIN = 15;
const MOST_LEAPS = (26 * 60) / LEAP_MIN;

/** Where a sky is said to have its cloud from. */
export type CloudBasis = "hour" | "day" | "assumed_clear";

/** An instant of a window. */
export interface Moment {
  elevation_deg: number;
  cloud_oktas: number;
}

/** A stretch of a day. */
export interface DayWindow {
  from_ms: number;
  to_ms: number;
  /** By the clocks of the place, `YYYY-MM-DDThh:mm`. */
  from_local_time: string;
  to_local_time: string;
  moments: Moment[];
  cloud_basis: CloudBasis;
}

export interface Day {
  date: string;
  windows: DayWindow[];
}

/** All days of a plan. */
export interface PlannedDays {
  days: Day[];
  /** Entries of the forecast that bear on no window. */
  forecast_unused: number;
}

/** Every date from the first to the last, `YYYY-MM-DD`. */
export function datesOf({ first_date, last_date }: Pick<WindowsPlan, "first_date" | "last_date">): string[] {
  const [first, last] = [Date.parse(`${first_date}T00:00Z`), Date.parse(`${last_date}T00:00Z`)];
  const count = Math.round((last - first) / DAY_MS) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) =>
    new Date(first + i * DAY_MS).toISOString().slice(0, 10),
  );
}

/**
 * The instant at which clocks show a time on a day, or the first one after it where a clock change leaps over it. Of a time that they
 * show twice, an opening is the first, and a closing, too (RFC 5545, section 3.3.5).
 * @throws SceneProblem for a zone or a year that there is not
 */
function instantOn(date: string, time: string, zone: string): number {
  const wanted_ms = Date.parse(`${date}T${time}Z`);
  for (let leap = 0; leap <= MOST_LEAPS; leap++) {
    const local = new Date(wanted_ms + leap * LEAP_MIN * MINUTE_MS).toISOString().slice(0, 16);
    try {
      return localTimeToInstant(local, zone).instant.getTime();
    } catch (error) {
      if (!(error instanceof OpticsDomainError)) throw error;
      if (error.refusal.code === "local_time_skipped") continue;
      const field = error.refusal.code === "time_zone_unknown" ? "time_zone" : "first_date";
      throw new SceneProblem(error.refusal, field);
    }
  }
  throw new RangeError(`No clock of ${zone} shows ${date} ${time}.`);
}

/** What a forecast says of an hour, of its day, or nothing, which is taken for clear. */
class Skies {
  readonly #known: ReadonlyMap<string, CloudForecast>;
  readonly #used = new Set<CloudForecast>();

  constructor(forecast: readonly CloudForecast[]) {
    this.#known = new Map(forecast.map((entry) => [`${entry.date} ${entry.hour ?? ""}`, entry]));
  }

  /** @param local by the clocks of the place, `YYYY-MM-DDThh:mm` */
  at(local: string): { oktas: number; basis: CloudBasis } {
    const date = local.slice(0, 10);
    const entry = this.#known.get(`${date} ${Number(local.slice(11, 13))}`) ?? this.#known.get(`${date} `);
    if (entry === undefined) return { oktas: 0, basis: "assumed_clear" };
    this.#used.add(entry);
    return { oktas: entry.cloud_oktas, basis: entry.hour === undefined ? "day" : "hour" };
  }

  /** Entries that nobody has asked for. */
  get unused(): number {
    return this.#known.size - this.#used.size;
  }
}

/** The least sure of two. */
const lessSure = (a: CloudBasis, b: CloudBasis): CloudBasis =>
  a === "assumed_clear" || b === "assumed_clear"
    ? "assumed_clear"
    : a === "day" || b === "day"
      ? "day"
      : "hour";

/** @throws SceneProblem for a zone or a year that there is not */
export function daysOf(plan: WindowsPlan): PlannedDays {
  const { latitude_deg, longitude_deg, time_zone, opens_at, closes_at, window_min, forecast } = plan;
  const skies = new Skies(forecast);
  const place = { latitude_deg, longitude_deg };
  const length_ms = window_min * MINUTE_MS;
  const count = Math.ceil(window_min / STEP_MIN);
  const days = datesOf(plan).map((date) => {
    const [opens_ms, closes_ms] = [
      instantOn(date, opens_at, time_zone),
      instantOn(date, closes_at, time_zone),
    ];
    const clock = clockIn(time_zone);
    const windows: DayWindow[] = [];
    for (let from_ms = opens_ms; from_ms + length_ms <= closes_ms; from_ms += length_ms) {
      let cloud_basis: CloudBasis = "hour";
      const moments = Array.from({ length: count }, (_, k): Moment => {
        const at_ms = from_ms + ((k + 0.5) / count) * length_ms;
        const { oktas, basis } = skies.at(clock(at_ms));
        cloud_basis = lessSure(cloud_basis, basis);
        const { elevation_refracted_deg } = sunPosition(place, new Date(at_ms));
        return { elevation_deg: elevation_refracted_deg, cloud_oktas: oktas };
      });
      const to_ms = from_ms + length_ms;
      windows.push({
        from_ms,
        to_ms,
        from_local_time: clock(from_ms),
        to_local_time: clock(to_ms),
        moments,
        cloud_basis,
      });
    }
    return { date, windows };
  });
  return { days, forecast_unused: skies.unused };
}
