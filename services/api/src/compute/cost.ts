import type { OperationName, SceneSize } from "@sunfathom/answers";
import type { Problem } from "@sunfathom/contract";
import { operations } from "../operations.js";

/** Depths that stand for a range, and filters that are tried where no kit is given. */
const depthsOfRange = 7;
const filtersOfGrid = 25;

/** How the water is measured and where the sun stands cost as much in every calculation. */
const common = 6;
/** A water is looked for until it is as clear as was seen: more than most calculations are. */
const seenWater = 8;

/** What each calculation costs, as its descriptor says: `npm run prove` holds that against the time that the worst scenes take. */
const costs = new Map(operations.map(({ name, cost }) => [name, cost]));

/** A question costs about this much, whether it is asked, packed or marked. */
const question = 12;

/** What a paper of so many questions costs. */
export const costOfPaper = (count: number): number => count * question;

/** Errors that cost as much to find and to tell as reading a request and answering it. */
const errorsPerUnit = 10;

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
  port_kind?: string;
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
    ...rest
  }: Sized = scene;
  const range_m = max_depth_m - min_depth_m;
  const dearWater = latitude_deg === undefined && card_samples === undefined ? 0 : common;
  const lookedForWater = visibility_m === undefined ? 0 : seenWater;
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
  return Math.ceil(1 + dearWater + lookedForWater + (costs.get(name)?.(size) ?? 0));
}

/** A PNG costs so much, and as much again for so many square pixels of its width: it is about as high as wide. */
const png = 150;
const widthOfPng_px = 600;

/** What a picture of a scene costs: its figures, drawing them, and making pixels of that. */
export function costOfPicture(
  { of, drawing }: { of: OperationName; drawing: number },
  scene: object,
  { format, width_px }: { format: string; width_px: number },
): number {
  const pixels = format === "png" ? png * (1 + (width_px / widthOfPng_px) ** 2) : 0;
  return Math.ceil(costOfCalculation(of, scene) + drawing + pixels);
}
