/** Texts of questions on practice with lights, mounts and recordings. */
import { list, series } from "./common.js";

export const PRACTICE_EN = {
  lamp_place: {
    stem: "Your footage shows bright specks all over: backscatter of your video lights. Which of these keep it down?",
    option: {
      closer: ["Come closer to the subject", "Come closer to the subject, under control, before you film"],
      arms: ["Longer arms for the lights", "Move the lights out to both sides on longer arms"],
      outward: [
        "Turn the beams a little outward",
        "Turn the beams a little outward, so that only their edges light the subject",
      ],
      clear_of_sand: [
        "Keep fins clear of the sand",
        "Keep your fins clear of the bottom, so that no sand is stirred up",
      ],
      dim_by_day: [
        "Dim them where daylight is enough",
        "Dim the lights, or switch them off, where daylight is enough",
      ],
      behind_port: [
        "Pull the lights back behind the port",
        "Pull the lights back, so that they stand behind the front of the port",
      ],
      beside_lens: ["Lights close beside the lens", "Mount both lights as close beside the lens as they go"],
      on_top: ["One light on top of the housing", "A single light on top of the housing, straight ahead"],
      crossed: [
        "Cross the beams before the lens",
        "Turn the beams inward, so that they cross close to the lens",
      ],
      brighter: ["Turn both lights up", "Turn both lights up, so that the subject outshines the specks"],
      back_off: ["Back off some metres", "Back off some metres, so that the specks get smaller"],
      iso: ["Raise the ISO", "Raise the ISO and leave the lights as they are"],
      red_filter: [
        "A red filter on the lens",
        "A red filter in front of the lens, with the lights as they are",
      ],
    },
    last: "Specks shine where a beam lights the water close in front of the lens: keep that water dark, and the way through it short.",
  },
  mount_order: {
    stem: "Light comes from the water to the sensor. Put these in the order in which it meets them, the first at the top.",
    part: {
      swing_in: "A swing-in filter on the outside of the port",
      port: "The port of the housing",
      screwed: "A filter screwed onto the front of the lens",
      ring: "A step ring between that filter and the lens",
      lens: "The glass of the lens",
      sheet: "A filter sheet behind the lens",
      sensor: "The sensor",
    },
    last: (p: { order: string[] }) =>
      `Only what sits outside the port can be reached at depth. In order: ${series(p.order.map((text) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`))}.`,
  },
  recording_gain: {
    stem: {
      ten_bits: "You film in 10 bits instead of 8, with all else as it was. Which of these do you gain?",
      raw: "You film raw, in 12 bits, instead of an 8-bit clip with all else as it was. Which of these do you gain?",
    },
    option: {
      steps: ["Finer steps between tones", "Finer steps between the tones that were recorded"],
      stretch: ["A grade with less banding", "Room to stretch a channel in the grade before bands show"],
      later_balance: ["White balance in the grade", "A white balance that you can still choose in the grade"],
      later_sharpening: ["Sharpening that you choose", "Sharpening and noise reduction as you choose them"],
      red: ["Red that the water took", "Red light that the water took before it reached the camera"],
      noise: ["Red with half the noise", "Half the noise in the red channel at the same exposure"],
      clipped: [
        "Detail where the sensor was full",
        "Detail in sand so bright that the sensor itself was full",
      ],
      smear: ["Sharp motion in dim light", "Sharp motion where the exposure time was long"],
      two_lights: ["One colour for two lights", "One colour for daylight and video lights that differ"],
    },
    at: (p: { depth: string; water: string }) => `On a grey subject at ${p.depth} in ${p.water}`,
    figures: {
      ten_bits: (p: { scene: string; few: string; many: string; before: string; after: string }) =>
        `${p.scene}, a stop of red has ${p.many} code values in 10 bits and ${p.few} in 8. Its red light is ${p.before} times the noise in 8 bits and ${p.after} times in 10.`,
      raw: (p: { scene: string; few: string; many: string; before: string; after: string }) =>
        `${p.scene}, a stop of red has ${p.many} code values in 12 bits and ${p.few} in 8. Its red light is ${p.before} times the noise in 8 bits and ${p.after} times in 12.`,
    },
    last: "More bits describe what the sensor received more finely, and raw leaves choices for later. Neither brings light that never came.",
  },
  histogram_reading: {
    stem: (p: { depth: string; water: string }) =>
      `You film a colour chart at ${p.depth} in ${p.water}, in daylight alone. The picture shows its histogram. What do you do first?`,
    option: {
      cast: ["Set the white balance", "Set the white balance on a card: the channels lie far apart"],
      under: ["Give more light", "Give some two stops more light: nothing reaches the right half"],
      over: ["Give less light", "Give some two stops less light: much of it is stuck at the right end"],
      good: ["Nothing: start filming", "Nothing: exposure and white balance are right, so start filming"],
    },
    read: (p: { channels: { name: string; middle: string; full: string }[] }) =>
      `${series(p.channels.map(({ name, middle, full }) => `${name.charAt(0).toUpperCase()}${name.slice(1)}: half of it lies below ${middle}, and ${full} at 255`))}.`,
    last: {
      cast: "One channel lies far from the others: white is not white yet, and a white balance puts that right.",
      under:
        "All channels crowd at the left end: the picture is too dark, and noise will show when it is raised.",
      over: "Much of the picture is stuck at 255: what is clipped has no tones left, so give less light.",
      good: "The channels lie over each other and fill the middle, with hardly anything at either end.",
    },
  },
  histogram: {
    title: "Histogram",
    xAxis: "Code value",
    yAxis: "How often, % of the most",
    alt: (p: { channels: { name: string; from: number; to: number; quarters: number[] }[] }) =>
      `A histogram of three channels. ${p.channels
        .map(
          ({ name, from, to, quarters }) =>
            `${name.charAt(0).toUpperCase()}${name.slice(1)} reaches from ${from} to ${to} of 255, and its quarters end at ${list(quarters.map(String))}.`,
        )
        .join(" ")}`,
  },
};
