/** Texts of questions on white balance. */
import { list } from "./common.js";

export const BALANCE_EN = {
  when_to_balance: {
    stem: "You have balanced on a card and go on filming. After which of these do you have to balance again?",
    option: {
      descend: (p: { from: string; to: string; water: string }) =>
        `In daylight, you go down from ${p.from} to ${p.to} in ${p.water}`,
      lamps_on: (p: { depth: string; distance: string; water: string }) =>
        `At ${p.depth} in ${p.water}, you switch on strong lamps ${p.distance} from the subject`,
      filter_on: (p: { kind: string }) => [
        `You swing a ${p.kind} filter in front of the lens`,
        `You swing a ${p.kind} filter in front of the lens, and film the same subject from the same place again`,
      ],
      level: (p: { depth: string; minutes: number }) => [
        `In daylight, you follow the reef at ${p.depth} for ${p.minutes} minutes under the same sky`,
        `You stay at ${p.depth} under the same sky`,
      ],
      night_descend: (p: { from: string; to: string }) =>
        `At night, lit by your lamps alone, you go down from ${p.from} to ${p.to} and keep the same distance to the subject`,
      subject: (p: { colour: string }) => [
        `Your next subject is a ${p.colour} sponge in the same light`,
        `Your next subject is a ${p.colour} sponge, some way along the reef, at the same depth and in the same light`,
      ],
      iso: (p: { from: string; to: string }) => [
        `You change from ${p.from} to ${p.to}`,
        `You change from ${p.from} to ${p.to}, as the last pictures came out darker than you wanted them to be`,
      ],
    },
    feedback: {
      descend: "The water above has grown, and with it its colour.",
      lamps_on: "The lamps now lead, and their light has another colour than daylight at depth.",
      filter_on: "The filter changes the colour of all the light that reaches the sensor.",
    },
    last: "A balance holds while the light that reaches the sensor from a white card keeps its colour.",
  },
  lamp_only_balance: {
    stem: (p: { depth: string; distance: string; kelvin: string }) =>
      `On a night dive down to ${p.depth}, two lamps of ${p.kelvin} are your only light. All that you film is ${p.distance} from the lamps. What is needed, and enough, for white to stay white?`,
    option: {
      card: (p: { distance: string }) => `One balance on a card in lamp light, ${p.distance} from the lamps`,
      surface: [
        "The balance that was right in daylight at the surface",
        "The balance that was right in daylight at the surface, kept for the whole night dive",
      ],
      deeper: (p: { every: string }) => [
        `A balance on a card, done again after every ${p.every}`,
        `A balance on a card in the light of the lamps, done again after every ${p.every} of depth`,
      ],
      filter: [
        "A balance on a card, and a red filter on the lens",
        "A balance on a card in the light of the lamps, with a red filter in front of the lens",
      ],
      higher: (p: { kelvin: string }) => [
        `${p.kelvin}, as the lamps look warm`,
        `A kelvin value of ${p.kelvin} in place of a card, as the light of the lamps looks warm`,
      ],
    },
    loss: (p: { red: string; green: string; blue: string }) =>
      `The water between lamp, subject and camera takes ${p.red} of red, ${p.green} of green and ${p.blue} of blue, at any depth.`,
    last: "The lamps make the light, so one balance to them is enough, on a card at working distance: it counts the water between as well.",
  },
  kelvin_order: {
    stem: "These white lamps differ in colour temperature. Put them in order, the reddest light at the top and the bluest at the bottom.",
    entry: (p: { kelvin: string }) => `Lamp of ${p.kelvin}`,
    last: (p: { order: string[] }) =>
      `The higher the colour temperature, the bluer the light. From reddest to bluest: ${list(p.order)}.`,
  },
  kelvin_meaning: {
    stem: (p: { scene: string; depth: string }) =>
      `${p.scene} You film in daylight alone at ${p.depth}. Which setting makes a white card white?`,
    option: {
      card: "No kelvin value does: balance on the card itself",
      number: (p: { kelvin: string }) => [
        `${p.kelvin}`,
        `${p.kelvin}, the kelvin value that is nearest to this light`,
      ],
      surface: (p: { kelvin: string }) => [
        `${p.kelvin}, the light at the surface`,
        `${p.kelvin}, as sunlight keeps its colour temperature under water`,
      ],
      lowest: [
        "The lowest kelvin value",
        "The lowest kelvin value that the camera has, as the light is so blue",
      ],
    },
    distance: (p: { x: string; y: string; duv: string }) =>
      `The light has the chromaticity x = ${p.x}, y = ${p.y}, which is ${p.duv} from the colours of glowing bodies (Duv).`,
    last: "Beyond a Duv of 0.05 a colour temperature has no meaning (CIE). A card shows the camera the light as it is.",
  },
  mired_shift: {
    stem: (p: { from: string; to: string }) =>
      `Which shift in mired turns light of ${p.from} into light of ${p.to}? A shift towards warmer light counts as positive.`,
    each: (p: { from: number; to: number; fromMired: string; toMired: string }) =>
      `1 000 000 / ${p.from} = ${p.fromMired} mired and 1 000 000 / ${p.to} = ${p.toMired} mired.`,
    last: (p: { fromMired: string; toMired: string; shift: string; rounded: string }) =>
      `The shift is the difference: ${p.toMired} - ${p.fromMired} = ${p.shift} mired, rounded to ${p.rounded} mired.`,
  },
};
