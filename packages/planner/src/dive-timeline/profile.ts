/** A dive's depth over time, drawn straight between its samples. */
import { itemAt } from "../lists/non-empty.js";
import type { DiveSample } from "./plan.js";

/** Shallower than this the model is not asked: what lies above it is taken at this depth. */
export const SHALLOWEST_M = 0.1;

/** Samples farther apart than this are looked at between them, too. */
const FAR_M = 0.5;
const FAR_S = 60;
/** Moments between samples, in all: few samples may have many between them, and many need none. */
const MOST_BETWEEN = 20_000;

const stepsBetween = (from: DiveSample, to: DiveSample): number =>
  Math.max(
    1,
    Math.ceil(Math.abs(to.depth_m - from.depth_m) / FAR_M),
    Math.ceil((to.time_s - from.time_s) / FAR_S),
  );

/** How many moments a dive is looked at, at most. */
export function momentsIn(samples: readonly DiveSample[]): number {
  let steps = samples.length;
  samples.forEach((to, i) => {
    const from = samples[i - 1];
    if (from !== undefined) steps += stepsBetween(from, to) - 1;
  });
  return Math.min(steps, samples.length + MOST_BETWEEN);
}

export class Profile {
  readonly #deepest: number;

  /** @param samples in the order of time, two at least */
  constructor(readonly samples: readonly DiveSample[]) {
    let deepest = 0;
    samples.forEach(({ depth_m }, i) => {
      if (depth_m > itemAt(samples, deepest).depth_m) deepest = i;
    });
    this.#deepest = deepest;
  }

  get first_s(): number {
    return itemAt(this.samples, 0).time_s;
  }

  get last_s(): number {
    return itemAt(this.samples, this.samples.length - 1).time_s;
  }

  /** The first sample at or after a time. */
  #from(time_s: number): number {
    let low = 0;
    let high = this.samples.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (itemAt(this.samples, middle).time_s >= time_s) high = middle;
      else low = middle + 1;
    }
    return low;
  }

  /** Depth at a time of the dive, m. */
  depthAt(time_s: number): number {
    const next = this.#from(time_s);
    const to = itemAt(this.samples, next);
    if (next === 0 || to.time_s <= time_s) return Math.max(SHALLOWEST_M, to.depth_m);
    const from = itemAt(this.samples, next - 1);
    const share = (time_s - from.time_s) / (to.time_s - from.time_s);
    return Math.max(SHALLOWEST_M, from.depth_m + share * (to.depth_m - from.depth_m));
  }

  /** Both ends of a stretch of time, every sample between, and what lies between two that are far apart. */
  along(from_s: number, to_s: number): DiveSample[] {
    const all = this.#samplesAlong(from_s, to_s);
    const most = Math.ceil(MOST_BETWEEN / this.samples.length);
    return all.flatMap((to, i) => {
      const from = all[i - 1];
      if (from === undefined) return [to];
      const steps = Math.min(most, stepsBetween(from, to));
      return Array.from({ length: steps }, (_, k): DiveSample => {
        const share = (k + 1) / steps;
        return share === 1
          ? to
          : {
              time_s: from.time_s + share * (to.time_s - from.time_s),
              depth_m: from.depth_m + share * (to.depth_m - from.depth_m),
            };
      });
    });
  }

  #samplesAlong(from_s: number, to_s: number): DiveSample[] {
    const ends = [from_s, to_s].map((time_s) => ({ time_s, depth_m: this.depthAt(time_s) }));
    const inside: DiveSample[] = [];
    for (let i = this.#from(from_s); i < this.samples.length; i++) {
      const { time_s, depth_m } = itemAt(this.samples, i);
      if (time_s >= to_s) break;
      if (time_s > from_s) inside.push({ time_s, depth_m: Math.max(SHALLOWEST_M, depth_m) });
    }
    return [itemAt(ends, 0), ...inside, itemAt(ends, 1)];
  }

  /** When the dive first came down to a depth; it may begin below it. Undefined where it never did. */
  downTo_s(depth_m: number): number | undefined {
    return this.#crossing(0, (depth) => depth >= depth_m, depth_m);
  }

  /** When it first came up to a depth, after the deepest point of all. Undefined where the samples end below it. */
  upTo_s(depth_m: number): number | undefined {
    return this.#crossing(this.#deepest, (depth) => depth <= depth_m, depth_m);
  }

  #crossing(first: number, isThere: (depth_m: number) => boolean, depth_m: number): number | undefined {
    for (let i = first; i < this.samples.length; i++) {
      const to = itemAt(this.samples, i);
      if (!isThere(to.depth_m)) continue;
      if (i === first || to.depth_m === depth_m) return to.time_s;
      const from = itemAt(this.samples, i - 1);
      const share = (depth_m - from.depth_m) / (to.depth_m - from.depth_m);
      return from.time_s + share * (to.time_s - from.time_s);
    }
    return undefined;
  }
}

/** What lies under no clip is filmed from here down: shallower nobody hovers with a card in hand. Common practice, no published source. */
const FILMED_FROM_M = 2;

/**
 * The depths that were filmed: those of the clips, or where there are none, those of the dive, with those at which the camera was set.
 * To the centimetre.
 */
export function filmedDepths(
  samples: readonly DiveSample[],
  clips: readonly { from_s: number; to_s: number }[],
  events: readonly { time_s: number }[] = [],
): { min_depth_m: number; max_depth_m: number } {
  const profile = new Profile(samples);
  const stretches = clips.length > 0 ? clips : [{ from_s: profile.first_s, to_s: profile.last_s }];
  let [least, most] = [Infinity, 0];
  for (const { from_s, to_s } of stretches)
    for (const { depth_m } of profile.along(from_s, to_s)) {
      least = Math.min(least, depth_m);
      most = Math.max(most, depth_m);
    }
  if (clips.length === 0) least = Math.min(most, Math.max(least, FILMED_FROM_M));
  for (const { time_s } of events) {
    const depth_m = profile.depthAt(time_s);
    least = Math.min(least, depth_m);
    most = Math.max(most, depth_m);
  }
  const toCentimetres = (depth_m: number): number => Math.round(depth_m * 100) / 100;
  return { min_depth_m: toCentimetres(least), max_depth_m: toCentimetres(most) };
}
