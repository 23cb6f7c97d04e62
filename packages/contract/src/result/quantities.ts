import { quantity } from "../field/quantity.js";

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
