/** Texts of questions on filters. */
import type { FilterColour } from "../../quiz/colours.js";
import { series } from "./common.js";

/** The camera of the planner's scene. */
const CAMERA_EN =
  "Your camera can be set from ISO 200 to ISO 3200 and from f/2.8 to f/16, and the exposure time stays at 1/50 s.";
const WORTH_EN =
  "You show the pictures as the camera stores them. Which filter, if any, is worth mounting on the lens?";

export const FILTER_EN = {
  filter_for_water: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} You film at ${p.depth} in daylight alone and set a white balance on a card. ${CAMERA_EN} ${WORTH_EN}`,
    pictureStem: (p: { depth: string; sun: string }) =>
      `You film at ${p.depth}. The picture shows how much daylight is left there. The sun stands ${p.sun} above the horizon and the sky is clear. Daylight is your only light, and you set a white balance on a card. ${CAMERA_EN} ${WORTH_EN}`,
    option: {
      none: "No colour filter",
      red: "A red filter",
      magenta: "A magenta filter",
    },
    losses: (p: { depth: string; red: string; green: string; blue: string }) =>
      `On the way to ${p.depth} the water takes ${p.red} from red, ${p.green} from green and ${p.blue} from blue.`,
    errors: (p: { without: string; name: string; error: string }) =>
      `The mean colour error of a chart is ${p.without} without a filter and ${p.error} with ${p.name} (we take about 1 as the least you can see).`,
    named: (p: { kind: FilterColour; density: string }) =>
      `the best ${p.kind} filter, of density ${p.density}`,
    read: (p: { nm: number; percent: string; red: string }) =>
      `Read from the curve: most is left at ${p.nm} nm, ${p.percent}, and at 600 nm it is ${p.red}.`,
    /** Of a filter where so little water lies above that none pays. */
    notNeeded:
      "So little water has taken little from red: there is hardly anything for a filter to hold back.",
    last: {
      none: "A filter is worth mounting if it lowers the mean colour error by at least 1. None does here.",
      red: "Red is weak against both green and blue, and there is light to spare: a red filter holds both back.",
      magenta:
        "Green is strong against red and blue, and there is light to spare: a magenta filter holds green back.",
    },
  },
  density_to_stops: {
    stem: (p: { density: string }) =>
      `An ND filter has a density of ${p.density}. How much light does it cost?`,
    colourStem: (p: { density: string }) =>
      `A magenta filter has a density of ${p.density} for green light. How much green light does it cost?`,
    stackStem: (p: { first: string; second: string }) =>
      `ND filters of density ${p.first} and ${p.second} sit one behind the other. How much light do they cost together?`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Densities add: ${p.first} + ${p.second} = ${p.sum}.`,
    whole: (p: { density: string; stops: string }) =>
      `A density of 0.3 is a stop: ${p.density} / 0.3 = ${p.stops}.`,
    last: (p: { density: string; stops: string }) =>
      `A density of 1 costs 3.32 stops: ${p.density} × 3.32 = ${p.stops}.`,
  },
  densities_stack: {
    densityStem: (p: { first: string; second: string }) =>
      `ND filters of density ${p.first} and ${p.second} sit one behind the other. What is their density together?`,
    percentStem: (p: { first: string; second: string }) =>
      `ND filters of density ${p.first} and ${p.second} sit one behind the other. How much of the light passes both?`,
    sharesStem: (p: { first: string; second: string }) =>
      `One ND filter lets ${p.first} of the light through, and a second one ${p.second}. You stack them. What is their density together?`,
    shares: (p: { first: string; second: string; both: string }) =>
      `Shares multiply: ${p.first} of ${p.second} is ${p.both}.`,
    toDensity: (p: { both: string; density: string }) =>
      `The density of ${p.both} is -log10(${p.both}) = ${p.density}.`,
    option: (p: { density: string }) => `Density ${p.density}`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Densities add: ${p.first} + ${p.second} = ${p.sum}.`,
    percent: (p: { density: string; percent: string }) =>
      `A density of ${p.density} lets through 1 / 10^${p.density} = ${p.percent}.`,
  },
  density_match: {
    stopsStem: "Match each density of an ND filter with the light that it costs.",
    factorStem:
      "Match each density with its filter factor: the number by which you multiply the exposure time, with ISO and aperture as they were.",
    shareStem: "Match each density of an ND filter with the share of light that it lets through.",
    density: (p: { density: string }) => `Density ${p.density}`,
    factor: (p: { factor: number }) => `Factor ${p.factor} (ND${p.factor})`,
    share: (p: { of: number }) => `1/${p.of} of the light`,
    rule: {
      stops: "A density of 0.3 costs one stop, and each 0.3 more costs another.",
      factor: "A density of 0.3 is a factor of 2, and each 0.3 more doubles the factor.",
      share: "A density of 0.3 lets half the light through, and each 0.3 more halves it again.",
    },
    last: (p: { pairs: { left: string; right: string }[] }) =>
      `${series(p.pairs.map(({ left, right }) => `${left}: ${right.charAt(0).toLowerCase()}${right.slice(1)}`))}.`,
  },
  density_to_even_out: {
    stem: (p: { water: string; depth: string; red: string; green: string }) =>
      `At ${p.depth} in ${p.water} the red channel has lost ${p.red} and the green channel ${p.green}. A filter has to bring green down to the level of red without costing any red. What density must it have for green light?`,
    difference: (p: { red: string; green: string; difference: string }) =>
      `Green has more light than red by ${p.red} - ${p.green} = ${p.difference}.`,
    last: (p: { difference: string; density: string }) =>
      `A density of 1 costs 3.32 stops: ${p.difference} / 3.32 = ${p.density}.`,
    leftStem: (p: {
      water: string;
      depth: string;
      red: string;
      green: string;
      greenDensity: string;
      redDensity: string;
    }) =>
      `At ${p.depth} in ${p.water} the red channel has lost ${p.red} and the green channel ${p.green}. Your magenta filter has a density of ${p.greenDensity} for green light and of ${p.redDensity} for red light. By how much is green still ahead of red behind it?`,
    costs: (p: { green: string; red: string; stops: string }) =>
      `The filter takes more from green than from red by a density of ${p.green} - ${p.red}, and a density of 1 costs 3.32 stops: ${p.stops}.`,
    left: (p: { difference: string; costs: string; left: string }) =>
      `What is left: ${p.difference} - ${p.costs}, about ${p.left}.`,
  },
};
