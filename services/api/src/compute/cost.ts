import type { OperationName, SceneSize } from "@sunfathom/answers";
import type { Problem } from "@sunfathom/contract";
import { operations } from "../operations.js";

/** Depths that stand for a range, and filters that are tried where no kit is given. */
const depthsOfRange = 7;
const filtersOfGrid = 25;

/** Where the sun stands costs as much in every calculation. */
const common = 6;
/** A water is looked for until it is as clear as was seen: more than most calculations are. */
const seenWater = 8;
/** And one in which cards look as they were filmed is looked for under each of them, far longer. */
const water_cards = 40;
const water_card = 8;

/** What each calculation costs, as its descriptor says: `npm run prove` holds that against the time that the worst scenes take. */
const costs = new Map(operations.map(({ name, cost }) => [name, cost]));

/** A question costs about this much, whether it is asked, packed or marked. */
const question = 12;

/** A kind of question of which few are left is drawn from until none turns up: how much at the most, where so many are avoided. */
const exhausted = (avoided: number): number => Math.min(40 * avoided, 150 + 1.5 * avoided);

/** What a paper of so many questions costs. @param avoided how many are not to be asked again */
export const costOfPaper = (count: number, avoided = 0): number =>
  Math.ceil(count * question + exhausted(avoided));

/** Errors that cost as much to find and to tell as reading a request and answering it: what an unknown name was meant to be takes longest. */
const errorsPerUnit = 3;

/** What a request costs that is refused for what it says. */
export const costOfErrors = ({ errors = [] }: Problem): number =>
  1 + Math.ceil(errors.length / errorsPerUnit);

/** The fields of a scene that say how large it is. */
interface Sized {
  min_depth_m?: number;
  max_depth_m?: number;
  lamps?: readonly unknown[];
  kit?: readonly { item: string }[];
  filter_change_underwater?: string;
  latitude_deg?: number;
  card_samples?: readonly unknown[];
  visibility_m?: number;
  secchi_depth_m?: number;
  port_kind?: string;
  filter_fits?: readonly unknown[];
  sensor_samples?: readonly unknown[];
}

/** A filter is fitted to its pictures, and told from every other one; for a camera of its own all there are are seen anew. */
const fit = 1 / 4;
const comparison = 1 / 200;
const ownCamera = 8;

/**
 * What it costs to bring a scene into its one form, beyond what its length says: an answer that is kept costs as much.
 * @param scene in its one form
 */
export function costOfForm({ filter_fits = [], sensor_samples }: Sized): number {
  const { length } = filter_fits;
  if (length === 0) return 0;
  return Math.ceil(length * fit + length ** 2 * comparison + (sensor_samples === undefined ? 0 : ownCamera));
}

/** @param scene in its one form */
export function costOfCalculation(name: OperationName, scene: object): number {
  const {
    min_depth_m = 0,
    max_depth_m = 0,
    lamps,
    kit,
    latitude_deg,
    card_samples,
    visibility_m,
    secchi_depth_m,
    ...rest
  }: Sized = scene;
  const range_m = max_depth_m - min_depth_m;
  const placedSun = latitude_deg === undefined ? 0 : common;
  const byCards = card_samples === undefined ? 0 : water_cards + card_samples.length * water_card;
  const lookedForWater = byCards + ((visibility_m ?? secchi_depth_m) === undefined ? 0 : seenWater);
  const owned = kit?.filter(({ item }) => item === "lens_filter").length ?? 0;
  const size: SceneSize = {
    depths: range_m === 0 ? 1 : depthsOfRange,
    range_m,
    lamps: lamps?.length ?? 0,
    filters: kit === undefined ? filtersOfGrid : 1 + owned,
    owned,
    legs: rest.filter_change_underwater === "flip" || rest.filter_change_underwater === "clip_on" ? 2 : 1,
    mounted: rest.port_kind !== undefined,
  };
  const calculation = costs.get(name)?.(size) ?? 0;
  return Math.ceil(1 + placedSun + lookedForWater + costOfForm(scene) + calculation);
}

/** A PNG costs so much, and as much again for so many pixels. */
const png = 150;
const pixels = 600 ** 2;
export const costOfPng = (width_px: number, height_px: number): number =>
  png * (1 + (width_px * height_px) / pixels);

/** What a picture of a scene costs: its figures, drawing them, and making pixels of that. */
export function costOfPicture(
  { of, drawing }: { of: OperationName; drawing: number },
  scene: object,
  { format, width_px }: { format: string; width_px: number },
): number {
  // About as high as wide.
  const drawn = format === "png" ? costOfPng(width_px, width_px) : 0;
  return Math.ceil(costOfCalculation(of, scene) + drawing + drawn);
}
