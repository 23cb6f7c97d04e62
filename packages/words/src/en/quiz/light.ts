/** Texts of questions on what water takes, and in what order. */
import type { Band } from "../../quiz/bands.js";
import { list } from "./common.js";

const BANDS_EN: Readonly<Record<Band, string>> = {
  "650": "red (650 nm)",
  "600": "orange (600 nm)",
  "575": "yellow (575 nm)",
  "525": "green (525 nm)",
  "475": "blue (475 nm)",
  "425": "violet (425 nm)",
};
/** As a curve can be read. */
const rounded = (percent: number): number => Number(percent.toFixed(percent >= 10 ? 0 : 1));

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
      `Loss per metre: ${list(p.losses.map(({ band, stops }) => `${band} ${stops}`))}.`,
    last: (p: { order: string[] }) =>
      `The more a metre takes, the sooner the colour is gone. From first to last: ${list(p.order)}.`,
  },
  red_left: {
    row: (p: { depth: string; red: string; green: string; blue: string }) =>
      `${p.depth}: red ${p.red}, green ${p.green}, blue ${p.blue}`,
    stem: (p: { scene: string; rows: string[]; depth: string }) =>
      `${p.scene} Below the surface a camera's channels have lost these stops of daylight. ${p.rows.join("; ")}. How much of the red light from just below the surface is left at ${p.depth}?`,
    read: (p: { depth: string; stops: string }) => `At ${p.depth} the table has ${p.stops} for red.`,
    between: (p: { depth: string; stops: string }) =>
      `Half way between the two depths red has lost about the mean of the two figures. At ${p.depth} that makes ${p.stops}.`,
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
    behindStem: (p: { water: string; depth: string; red: string; green: string }) =>
      `At ${p.depth} in ${p.water}, ${p.red} of the light that a camera's red channel sees just below the surface is left, and ${p.green} of the light of its green channel. How far has red fallen behind green?`,
    ratio: (p: { red: string; green: string; ratio: string }) =>
      `Green has kept more of its light than red by a factor of ${p.green.replace(" %", "")} / ${p.red.replace(" %", "")} = ${p.ratio}.`,
    behindLast: (p: { factor: string; stops: string }) =>
      `Stops count factors of two: log2(${p.factor}) = ${p.stops}. A white balance has to raise red by that much.`,
  },
  water_from_spectrum: {
    stem: (p: { depth: string }) =>
      `The picture shows how much of the daylight from just below the surface is left at ${p.depth}. Look at the colour of which most is left, and at how much that is. In which water was this?`,
    option: (p: { water: string }) => `In ${p.water}`,
    peak: (p: { nm: number; percent: string }) => `Most is left at ${p.nm} nm: ${p.percent}.`,
    others: (p: { depth: string; each: { water: string; nm: number; percent: string }[] }) =>
      `At ${p.depth} it would be ${list(p.each.map(({ water, nm, percent }) => `${percent} at ${nm} nm in ${water}`))}.`,
    last: (p: { water: string }) =>
      `Ocean water leaves most of the blue, coastal water most of the green, and the more turbid it is, the less of either: this is ${p.water}.`,
  },
  spectrum_most_left: {
    stem: (p: { depth: string }) =>
      `The picture shows how much of the daylight from just below the surface is left at ${p.depth} in one kind of water. Which of these colours has the largest share left?`,
    option: (p: { band: string }) => `${p.band.charAt(0).toUpperCase()}${p.band.slice(1)}`,
    reading: (p: { shares: { colour: string; percent: string }[] }) =>
      `Read from the curve: ${list(p.shares.map(({ colour, percent }) => `${colour.toLowerCase()} ${percent}`))}.`,
    last: (p: { colour: string }) => `${p.colour} has the largest share left.`,
  },
  red_reach: {
    stem: (p: { scene: string }) =>
      `${p.scene} The picture shows how the light from just below the surface falls with depth. At about what depth is a tenth of the orange and red light (600 to 700 nm) left?`,
    stopsStem: (p: { scene: string; stops: string }) =>
      `${p.scene} The picture shows how the light from just below the surface falls with depth. At about what depth has orange and red light (600 to 700 nm) lost ${p.stops}?`,
    share: (p: { stops: string; percent: string }) =>
      `Each stop leaves half of what was there: ${p.stops} leave ${p.percent} %.`,
    falls: (p: { half: string; hundredth: string }) =>
      `On the curve of orange and red, half is left at ${p.half} and a hundredth at ${p.hundredth}.`,
    last: (p: { depth: string; percent: string }) =>
      `The curve of orange and red crosses ${p.percent} % at about ${p.depth}.`,
  },
  depthPicture: {
    title: "Light left, by depth",
    xAxis: "Depth, m",
    yAxis: "Light left, %",
    curve: { red: "orange and red", green: "green", all: "brightness" },
    alt: (p: { curves: { name: string; shares: { m: number; percent: number }[] }[] }) =>
      `Curves of the light that is left, in percent of that just below the surface. ${p.curves
        .map(
          ({ name, shares }) =>
            `${name}: ${list(shares.map(({ m, percent }) => `${rounded(percent)} % at ${m} m`))}`,
        )
        .join(". ")}.`,
  },
  picture: {
    title: (p: { depth: string }) => `Daylight left at ${p.depth}`,
    xAxis: "Wavelength, nm",
    yAxis: "Light left, %",
    alt: (p: { depth: string; shares: { nm: number; percent: number }[] }) =>
      `A curve of the daylight that is left at ${p.depth}, in percent of that just below the surface: ${list(p.shares.map(({ nm, percent }) => `${rounded(percent)} % at ${nm} nm`))}.`,
  },
};
