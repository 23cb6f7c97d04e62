/** Texts of questions on what water takes, and in what order. */
import { list } from "./common.js";

const BANDS_EN = {
  "650": "red (650 nm)",
  "600": "orange (600 nm)",
  "575": "yellow (575 nm)",
  "525": "green (525 nm)",
  "475": "blue (475 nm)",
  "425": "violet (425 nm)",
};
/** As a curve can be read. */
const rounded = (percent: number): number => Number(percent.toFixed(percent >= 10 ? 0 : 1));

export type Band = keyof typeof BANDS_EN;

export const LIGHT_EN = {
  band: BANDS_EN,
  colour: {
    "650": "Red",
    "600": "Orange",
    "575": "Yellow",
    "525": "Green",
    "475": "Blue",
    "425": "Violet",
  },
  channel: { red: "red", green: "green", blue: "blue" },

  colour_order: {
    stem: (p: { water: string }) =>
      `Daylight goes down into ${p.water}. Put these colours in the order in which they fade with depth, the first to fade at the top.`,
    losses: (p: { losses: { band: string; stops: string }[] }) =>
      `Loss per metre: ${list(p.losses.map(({ band, stops }) => `${band} ${stops} stops`))}.`,
    last: (p: { order: string[] }) =>
      `The more a metre takes, the sooner the colour is gone. From first to last: ${list(p.order)}.`,
  },
  red_left: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} How much of the light that a camera's red channel sees just below the surface is left at ${p.depth}?`,
    loss: (p: { depth: string; stops: string; low: string; high: string }) =>
      `Summed over what the red channel sees, the water takes ${p.stops} on the way to ${p.depth} (somewhere from ${p.low} to ${p.high} stops).`,
    last: (p: { stops: string; percent: string }) =>
      `Each stop leaves half of what was there: ${p.stops} leave about ${p.percent}.`,
  },
  percent_to_stops: {
    stem: (p: { water: string; depth: string; percent: string; channel: string }) =>
      `At ${p.depth} in ${p.water}, ${p.percent} of the light that a camera's ${p.channel} channel sees just below the surface is left. How large is this loss?`,
    factor: (p: { percent: string; factor: string }) =>
      `${p.percent} left means that the light is down by a factor of 100 / ${p.percent.replace(" %", "")} = ${p.factor}.`,
    last: (p: { factor: string; stops: string }) =>
      `Stops count factors of two: log2(${p.factor}) = ${p.stops}.`,
  },
  spectrum_most_left: {
    stem: (p: { depth: string }) =>
      `The picture shows how much of the daylight from just below the surface is left at ${p.depth} in one water. Which colour is left most?`,
    reading: (p: { shares: { colour: string; percent: string }[] }) =>
      `Read from the curve: ${list(p.shares.map(({ colour, percent }) => `${colour.toLowerCase()} ${percent}`))}.`,
    last: (p: { colour: string }) => `${p.colour} is left most.`,
  },
  red_reach: {
    stem: (p: { scene: string }) =>
      `${p.scene} Take the orange and red light (600 to 700 nm) just below the surface. At about what depth is a tenth of it left?`,
    falls: (p: { half: string; hundredth: string }) =>
      `Summed over these wavelengths, half is left at ${p.half} and a hundredth at ${p.hundredth}.`,
    last: (p: { depth: string; low: string; high: string }) =>
      `A tenth is left at ${p.depth}; as waters of one type differ, anywhere from ${p.low} to ${p.high}.`,
  },
  picture: {
    title: (p: { depth: string }) => `Daylight left at ${p.depth}`,
    xAxis: "Wavelength, nm",
    yAxis: "Light left, %",
    alt: (p: { depth: string; shares: { nm: number; percent: number }[] }) =>
      `A curve of the daylight that is left at ${p.depth}, in percent of that just below the surface: ${list(p.shares.map(({ nm, percent }) => `${rounded(percent)} % at ${nm} nm`))}.`,
  },
};
