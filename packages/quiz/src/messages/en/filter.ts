/** Texts of questions on filters. */
import { series } from "./common.js";

export const FILTER_EN = {
  filter_for_water: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} You film at ${p.depth} in daylight alone and balance on a card. Your camera goes from ISO 200 to 3200 and from f/2.8 to f/16, at 1/50 s. What do you mount on the lens?`,
    pictureStem: (p: { depth: string; sun: string }) =>
      `The picture shows how much daylight is left at ${p.depth} where you film. The sun stands ${p.sun} above the horizon and the sky is clear. You film in daylight alone and balance on a card. Your camera goes from ISO 200 to 3200 and from f/2.8 to f/16, at 1/50 s. What do you mount on the lens?`,
    option: {
      none: "No colour filter",
      red: "A red filter",
      magenta: "A magenta filter",
      blue: "A blue filter",
    },
    losses: (p: { depth: string; red: string; green: string; blue: string }) =>
      `On the way to ${p.depth} the water takes ${p.red} from red, ${p.green} from green and ${p.blue} from blue.`,
    errors: (p: { without: string; name: string; error: string }) =>
      `The mean colour error of a chart (CIEDE2000) is ${p.without} without a filter and ${p.error} with ${p.name}.`,
    named: (p: { kind: string; density: string }) => `the best ${p.kind} filter, of density ${p.density}`,
    last: {
      none: "A filter must lower the colour error by at least 0.5 to be worth mounting. None does here.",
      red: "Red is weak against both green and blue, and there is light to spare: a red filter holds both back.",
      magenta:
        "Green is strong against red and blue, and there is light to spare: a magenta filter holds green back.",
    },
  },
  density_to_stops: {
    stem: (p: { density: string }) =>
      `A neutral filter has a density of ${p.density}. How much light does it take?`,
    colourStem: (p: { density: string }) =>
      `A magenta filter has a density of ${p.density} for green light. How much green light does it take?`,
    stackStem: (p: { first: string; second: string }) =>
      `Neutral filters of density ${p.first} and ${p.second} sit one behind the other. How much light do they take together?`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Densities add: ${p.first} + ${p.second} = ${p.sum}.`,
    last: (p: { density: string; stops: string }) =>
      `A density of 1 is 3.32 stops: ${p.density} × 3.32 = ${p.stops}.`,
  },
  densities_stack: {
    densityStem: (p: { first: string; second: string }) =>
      `Neutral filters of density ${p.first} and ${p.second} sit one behind the other. What is their density together?`,
    percentStem: (p: { first: string; second: string }) =>
      `Neutral filters of density ${p.first} and ${p.second} sit one behind the other. How much of the light passes both?`,
    option: (p: { density: string }) => `Density ${p.density}`,
    sum: (p: { first: string; second: string; sum: string }) =>
      `Densities add: ${p.first} + ${p.second} = ${p.sum}.`,
    percent: (p: { density: string; percent: string }) =>
      `A density of ${p.density} lets through 1 / 10^${p.density} = ${p.percent}.`,
  },
  density_match: {
    stopsStem: "Match each filter density with the stops of light that it takes.",
    factorStem:
      "Match each filter density with its filter factor, by which the exposure has to be multiplied.",
    percentStem: "Match each filter density with the share of light that it lets through.",
    density: (p: { density: string }) => `Density ${p.density}`,
    factor: (p: { factor: string }) => `Factor ${p.factor}`,
    rule: {
      stops: "A density of 0.3 takes one stop, and densities and stops grow together.",
      factor: "A density of 0.3 is a factor of 2, and each further 0.3 doubles the factor.",
      percent: "A density of 0.3 lets half the light through, and each further 0.3 halves it again.",
    },
    last: (p: { pairs: { left: string; right: string }[] }) =>
      `${series(p.pairs.map(({ left, right }) => `${left}: ${right.toLowerCase()}`))}.`,
  },
  density_to_even_out: {
    stem: (p: { water: string; depth: string; red: string; green: string }) =>
      `At ${p.depth} in ${p.water} the red channel has lost ${p.red} and the green channel ${p.green}. Which density for green light brings green down to the level of red? Assume that the filter takes no red.`,
    difference: (p: { red: string; green: string; difference: string }) =>
      `Green has more light than red by ${p.red} - ${p.green} = ${p.difference} stops.`,
    last: (p: { difference: string; density: string }) =>
      `3.32 stops make a density of 1: ${p.difference} / 3.32 = ${p.density}.`,
  },
};
