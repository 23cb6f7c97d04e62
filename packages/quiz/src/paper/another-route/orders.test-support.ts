/** Right orders and partners. */

import { integrateProduct, meanSensor, whiteLampPerLumen } from "@sunfathom/optics";
import type { Given } from "../../item/item.js";
import { numbersIn, s, samplesOf, there } from "./asked.test-support.js";

/** Common practice, written down here by hand. */
const DIVE = [
  /mount/i,
  /close/i,
  /surface/i,
  /filming depth/i,
  /deeper/i,
  /after the dive/i,
  /take the filter out/i,
];

/** A number that rises along the right order, from what an entry says. */
export const RANK: Record<string, (text: string, given: Given) => number> = {
  colour_order: (text, given) => {
    const [nm] = numbersIn(text);
    return -there(samplesOf(s(given, "water")).find((sample) => sample.wavelength_nm === nm)).kd_per_m;
  },
  kelvin_order: (text, given) => {
    const { red, blue } = meanSensor();
    const kelvin = there(numbersIn(text)[0]);
    const blueOverRed = (cct_K: number): number => {
      const light = whiteLampPerLumen(cct_K);
      return integrateProduct(light, blue) / integrateProduct(light, red);
    };
    // A preset divides by what it expects: the picture's red over its blue rises along the order.
    return "light_K" in given
      ? blueOverRed(kelvin) / blueOverRed(Number(given["light_K"]))
      : blueOverRed(kelvin);
  },
  ring_chain: (text) => there(numbersIn(text)[0]),
  order_of_dive: (text) => DIVE.findIndex((step) => step.test(text)),
};

/** Whether two entries are partners, from what they say. */
export const PARTNERS: Record<string, (left: string, right: string) => boolean> = {
  density_match: (left, right) => {
    const transmittance = 10 ** -there(numbersIn(left)[0]);
    const [value = 0] = numbersIn(right);
    const [, of = 0] = numbersIn(right);
    const says = right.includes("/") ? 1 / of : right.includes("stop") ? 0.5 ** value : 1 / value;
    return Math.abs(Math.log2(says / transmittance)) < 0.1;
  },
};
