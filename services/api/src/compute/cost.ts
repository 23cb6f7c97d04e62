import type { OperationName } from "@sunfathom/answers";

/** What a calculation's cost depends on. */
interface Size {
  /** Depths at which the scene is computed: one, or seven of a range. */
  depths: number;
  /** How far the range reaches, m: the farther, the more often the camera is balanced. */
  range_m: number;
  lamps: number;
  /** Filters to choose from. */
  filters: number;
  /** Stretches of the dive with and without the filter. */
  legs: number;
}

/** Depths that stand for a range, and filters that are tried where no kit is given. */
const depthsOfRange = 7;
const filtersOfGrid = 25;

/** How the water is measured and where the sun stands cost as much in every calculation. */
const common = 6;

const exposure = ({ depths, lamps }: Size) => depths * (1 + 1.5 * lamps);
const mixed = ({ depths, lamps }: Size) => depths * (1 + 10 * lamps);
const balance = ({ depths, range_m, lamps }: Size) => depths * 4 + range_m * (3 + 0.9 * lamps) + 30 * lamps;
const recovery = ({ depths, lamps }: Size) => depths * (8 + 5 * lamps);
const choice = ({ depths, filters, lamps }: Size) => depths * filters * 1.2 + 30 + depths * lamps;

/**
 * What each calculation costs, in units of about one attenuation at one depth: some half a millisecond of one processor.
 * `npm run prove` holds the table against the time that the worst scenes take.
 */
const costs: Readonly<Record<OperationName, (size: Size) => number>> = {
  attenuation: () => 0,
  "exposure-loss": exposure,
  "mixed-light": mixed,
  "white-balance": balance,
  "colour-recovery": recovery,
  "filter-choice": choice,
  "dive-advice": (size) =>
    choice(size) + 2 * mixed(size) + size.legs * (balance(size) + exposure(size)) + recovery(size),
  "filter-mounting": () => 2,
};

/** A question costs about this much, whether it is asked, packed or marked. */
const question = 12;

/** What a paper of so many questions costs. */
export const costOfPaper = (count: number): number => count * question;

/** What a question costs where its paper is not known yet: a sealed paper does not say how long it is. */
export const costOfMarking = (responses: number): number => costOfPaper(Math.max(10, responses));

/** The fields of a scene that say how large it is. */
interface Sized {
  min_depth_m?: number;
  max_depth_m?: number;
  lamps?: readonly unknown[];
  kit?: readonly { item: string }[];
  filter_change_underwater?: string;
  latitude_deg?: number;
  card_samples?: readonly unknown[];
}

/** @param scene in its one form */
export function costOfCalculation(name: OperationName, scene: object): number {
  const { min_depth_m = 0, max_depth_m = 0, lamps, kit, latitude_deg, card_samples, ...rest }: Sized = scene;
  const range_m = max_depth_m - min_depth_m;
  const dearWater = latitude_deg === undefined && card_samples === undefined ? 0 : common;
  return Math.ceil(
    1 +
      dearWater +
      costs[name]({
        depths: range_m === 0 ? 1 : depthsOfRange,
        range_m,
        lamps: lamps?.length ?? 0,
        filters:
          kit === undefined ? filtersOfGrid : 1 + kit.filter(({ item }) => item === "lens_filter").length,
        legs:
          (rest.filter_change_underwater ?? "fixed") === "flip" || rest.filter_change_underwater === "clip_on"
            ? 2
            : 1,
      }),
  );
}
