/** What questions were made from, and the light that they ask about, by another way than the templates take. */

import { daylightScene, withKd } from "@sunfathom/fixtures/scenes";
import { numberIn, readTable } from "@sunfathom/fixtures/tables";
import {
  attenuation,
  colourRecovery,
  filterChoice,
  mixedLight,
  type Scene,
  whiteBalance,
} from "@sunfathom/planner";
import type { Choice, Given } from "../../item/item.js";
import { remembered } from "../../light/remember.js";
import { twoLamps } from "../../light/scenes.js";

const table = readTable("jerlov_1976_kd");
export const samplesOf = (type: string) =>
  table
    .filter((row) => row["water_type"] === type)
    .map((row) => ({ wavelength_nm: numberIn(row, "wavelength_nm"), kd_per_m: numberIn(row, "Kd_per_m") }));

export function there<T>(value: T | undefined): T {
  if (value === undefined) throw new Error("Nothing is there.");
  return value;
}

export function n(given: Given, name: string): number {
  const value = given[name];
  if (typeof value !== "number") throw new Error(`${name} is no number.`);
  return value;
}
export const s = (given: Given, name: string): string => String(given[name]);
export const list = (given: Given, name: string): number[] => (given[name] as readonly number[]).map(Number);
export const numbersIn = (text: string): number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

export const sceneOf = (type: string, sun_deg: number, depth_m: number): Scene =>
  withKd(daylightScene("", sun_deg, depth_m), samplesOf(type));
export const scene = (given: Given): Scene =>
  sceneOf(s(given, "water"), n(given, "sun_deg"), n(given, "depth_m"));
export const lit = (given: Given): Scene => ({ ...scene(given), lamps: [twoLamps(n(given, "distance_m"))] });

export const lightOf = remembered((asked: Scene) => attenuation(asked));
export const filterOf = remembered((asked: Scene) => filterChoice(asked));
export const mixOf = remembered((asked: Scene) => mixedLight(asked));
export const recordOf = remembered((asked: Scene) => colourRecovery(asked));
export const balanceOf = remembered((asked: Scene) => whiteBalance(asked));

/** Same to the digits that survive another order of sums. */
export const same = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

export type RightChoice = (option: Choice, given: Given) => boolean;
