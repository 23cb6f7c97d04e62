/**
 * What a camera's white balance can do: the channel gains for every white point between two colour temperatures and within a
 * distance from the Planckian locus. A card beyond that is balanced to the nearest point of the region's edge.
 */
import { locusNormal, locusUv, mired, xyFromUv1960 } from "@sunfathom/optics";
import { lastOf, type NonEmpty, nonEmpty } from "../lists/non-empty.js";
import type { Camera } from "../scene/scene.js";
import { apply, invert, type Vector3 } from "./matrix.js";
import { remember, rememberFor } from "./remember.js";
import type { SensorProfile } from "./sensor-profile.js";

/** Gains of red and blue against green, in stops. */
interface GainPoint {
  red: number;
  blue: number;
}

/** Closed outline of the reachable gains, in stops. */
export type BalanceReach = Readonly<NonEmpty<GainPoint>>;

const EDGE_STEPS = 16;

/**
 * Least raw value against green: a white point that no light can make may ask for less than nothing of a channel, and is taken
 * for one that asks for ten stops of gain.
 */
const LEAST_AGAINST_GREEN = 2 ** -10;

const held = (value: number, green: number): number => Math.max(value, green * LEAST_AGAINST_GREEN);

const gainsInStops = ([r, green, b]: Vector3): GainPoint => gains([held(r, green), green, held(b, green)]);

const gains = (raw: Vector3): GainPoint => ({
  red: Math.log2(raw[1] / raw[0]),
  blue: Math.log2(raw[1] / raw[2]),
});

type BalanceLimits = Pick<
  Camera,
  "white_balance_min_cct_K" | "white_balance_max_cct_K" | "white_balance_max_duv"
>;

function outline(camera: BalanceLimits, profile: SensorProfile): BalanceReach {
  const toRaw = invert(profile.daylightMatrix);
  const warm = mired(camera.white_balance_min_cct_K);
  const cool = mired(camera.white_balance_max_cct_K);
  const at = (step: number, duv: number): GainPoint => {
    const m = cool + ((warm - cool) * step) / EDGE_STEPS;
    const p = locusUv(m);
    const n = locusNormal(m);
    const { x, y } = xyFromUv1960(p.u + duv * n.u, p.v + duv * n.v);
    return gainsInStops(apply(toRaw, [x / y, 1, (1 - x - y) / y]));
  };
  const duv = camera.white_balance_max_duv;
  const steps = Array.from({ length: EDGE_STEPS + 1 }, (_, i) => i);
  return nonEmpty([...steps.map((i) => at(i, duv)), ...steps.reverse().map((i) => at(i, -duv))], "points");
}

const reachesOf = rememberFor((profile: SensorProfile) =>
  remember(
    (camera: BalanceLimits) => outline(camera, profile),
    (c: BalanceLimits) =>
      `${c.white_balance_min_cct_K} ${c.white_balance_max_cct_K} ${c.white_balance_max_duv}`,
    16,
  ),
);

/** The gains that a camera with these limits can set. */
export const balanceReach = (camera: BalanceLimits, profile: SensorProfile): BalanceReach =>
  reachesOf(profile)(camera);

function isInside(reach: BalanceReach, p: GainPoint): boolean {
  let inside = false;
  let b = lastOf(reach);
  for (const a of reach) {
    if (
      a.blue > p.blue !== b.blue > p.blue &&
      p.red < ((b.red - a.red) * (p.blue - a.blue)) / (b.blue - a.blue) + a.red
    ) {
      inside = !inside;
    }
    b = a;
  }
  return inside;
}

function nearestOnEdge(reach: BalanceReach, p: GainPoint): GainPoint {
  let best: GainPoint = p;
  let least = Infinity;
  let a = lastOf(reach);
  for (const b of reach) {
    const dr = b.red - a.red;
    const db = b.blue - a.blue;
    const length = dr * dr + db * db;
    const t =
      length === 0 ? 0 : Math.min(1, Math.max(0, ((p.red - a.red) * dr + (p.blue - a.blue) * db) / length));
    const q = { red: a.red + t * dr, blue: a.blue + t * db };
    const d = Math.hypot(q.red - p.red, q.blue - p.blue);
    if (d < least) {
      least = d;
      best = q;
    }
    a = b;
  }
  return best;
}

const inGains = ({ red, blue }: GainPoint): Vector3 => {
  const least = Math.min(0, red, blue);
  return [2 ** (red - least), 2 ** -least, 2 ** (blue - least)];
};

/** The gains that a camera sets for the light of a black body of a colour temperature, its tint untouched. */
export function kelvinGains(profile: SensorProfile, cct_K: number): Vector3 {
  const { u, v } = locusUv(mired(cct_K));
  const { x, y } = xyFromUv1960(u, v);
  return inGains(gainsInStops(apply(invert(profile.daylightMatrix), [x / y, 1, (1 - x - y) / y])));
}

/** Less than this between channels cannot be seen on a grey (a CIEDE2000 of about 1). */
const UNSEEN_STOPS = 0.02;

export interface Balance {
  /** Channel gains red, green, blue; the smallest is 1. */
  gains: Vector3;
  /** Whether they make the card neutral. */
  in_reach: boolean;
  /** How far the card stays from neutral, in stops between channels: less than can be seen in reach. */
  residual_stops: number;
}

/** The gains that the camera sets when it measures a card that reads `raw`. */
export function balanceToCard(reach: BalanceReach, raw: Vector3): Balance {
  const wanted = gainsInStops(raw);
  const inside = isInside(reach, wanted);
  const set = inside ? wanted : nearestOnEdge(reach, wanted);
  const residual_stops = inside ? 0 : Math.hypot(set.red - wanted.red, set.blue - wanted.blue);
  return {
    gains: inGains(set),
    in_reach: residual_stops < UNSEEN_STOPS,
    residual_stops,
  };
}

/** How far a card that reads `raw` lies beyond what can be set, in stops between channels; below 0 how far within. */
export function beyondReach(reach: BalanceReach, raw: Vector3): number {
  const wanted = gainsInStops(raw);
  const edge = nearestOnEdge(reach, wanted);
  const away = Math.hypot(edge.red - wanted.red, edge.blue - wanted.blue);
  return isInside(reach, wanted) ? -away : away;
}

/** How far gains leave a card that reads `raw` from neutral. */
export function leftOn(gains: Vector3, raw: Vector3): Pick<Balance, "in_reach" | "residual_stops"> {
  const wanted = gainsInStops(raw);
  const residual_stops = Math.hypot(
    Math.log2(gains[0] / gains[1]) - wanted.red,
    Math.log2(gains[2] / gains[1]) - wanted.blue,
  );
  return { in_reach: residual_stops < UNSEEN_STOPS, residual_stops };
}
