import { quantity, quantityList } from "../field/quantity.js";

/** Quantities that several answers hold, each in one form. */
export function depth(description: string, example: number) {
  return quantity({ description, unit: "m", decimals: 2, min: 0.1, max: 100, example });
}

export function share(description: string, example: number) {
  return quantity({ description, unit: "1", decimals: 3, min: 0, max: 1, example });
}

export function density(description: string, example: number) {
  return quantity({ description, unit: "1", decimals: 2, min: 0, max: 3, example });
}

export function colourError(description: string, example: number) {
  return quantity({ description, unit: "1", decimals: 2, min: 0, max: 1000, example });
}

export function iso(description: string) {
  return quantity({ description, unit: "1", decimals: 0, min: 1, max: 1e12, example: 800 });
}

export function fNumber(description: string) {
  return quantity({ description, unit: "1", decimals: 1, min: 0, max: 1e6, example: 5.6 });
}

export function shutter_s(description: string) {
  return quantity({ description, unit: "s", decimals: 8, min: 0, max: 60, example: 0.02 });
}

/** Of a plain grey filter, for which no kind sets the limit. */
export function neutralDensity(description: string) {
  return quantity({ description, unit: "1", decimals: 2, min: 0, max: 100, example: 0.6 });
}

export function cct_K(description: string) {
  return quantity({ description, unit: "K", decimals: 0, min: 0, max: 1000000, example: 9800 });
}

export function duv(description: string) {
  return quantity({ description, unit: "1", decimals: 4, min: -1, max: 1, example: 0.0312 });
}

/** Of a field of view. */
export function angle(description: string, example: number) {
  return quantity({ description, unit: "deg", decimals: 1, min: 0, max: 220, example });
}

/** Depths at which to set a white balance, one way through the water. */
export function balanceDepths(way: "down" | "up", examples: readonly number[]) {
  return quantityList({
    description: `Depths at which to set a white balance on the way ${way}${way === "down" ? "; the first is where to start" : ""}.`,
    unit: "m",
    decimals: 2,
    min: 0.1,
    max: 100,
    example: 5,
    minItems: 0,
    maxItems: 1000,
    examples,
  });
}
