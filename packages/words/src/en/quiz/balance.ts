/** Texts of questions on white balance. */
import type { FilterColour } from "../../quiz/colours.js";
import { list } from "./common.js";

export const BALANCE_EN = {
  when_to_balance: {
    stem: "You have set a white balance on a card and go on filming. Your camera can balance the card at any depth. After which of these do you have to set it again?",
    option: {
      descend: (p: { from: string; to: string; water: string }) => [
        `In daylight, you go down from ${p.from} to ${p.to} in ${p.water}`,
        `In daylight, you go from ${p.from} down to ${p.to}`,
      ],
      little: (p: { from: string; to: string; water: string }) =>
        `In daylight, you go down from ${p.from} to ${p.to} in ${p.water}`,
      ascend: (p: { from: string; to: string; water: string }) => [
        `In daylight, you come up from ${p.from} to ${p.to} in ${p.water}`,
        `In daylight, you come up from ${p.from} to ${p.to}`,
      ],
      lamps_on: (p: { depth: string; distance: string; water: string }) =>
        `At ${p.depth} in ${p.water}, you switch on strong video lights ${p.distance} from the subject`,
      filter_on: (p: { kind: FilterColour }) => [
        `You swing a ${p.kind} filter in front of the lens`,
        `You swing a ${p.kind} filter in front of the lens, and film the same subject from the same place again`,
      ],
      level: (p: { depth: string; minutes: number }) => [
        `In daylight, you follow the reef at ${p.depth} for ${p.minutes} minutes under the same sky`,
        `You stay at ${p.depth} under the same sky`,
      ],
      night_descend: (p: { from: string; to: string }) =>
        `At night, lit by your video lights alone, you go down from ${p.from} to ${p.to} and keep the same distance to the subject`,
      subject: (p: { colour: "red" | "yellow" | "purple" }) => [
        `Your next subject is a ${p.colour} sponge in the same light`,
        `Your next subject is a ${p.colour} sponge, some way along the reef, at the same depth and in the same light`,
      ],
      iso: (p: { from: string; to: string }) => [
        `You change from ${p.from} to ${p.to}`,
        `You change from ${p.from} to ${p.to}, as the last pictures came out darker than you wanted them to be`,
      ],
    },
    feedback: {
      descend: "There is more water above you now, and with it another colour of daylight.",
      ascend: "There is less water above you now, so more red reaches you than the white balance expects.",
      lamps_on: "The video lights now lead, and their light has another colour than daylight at depth.",
      filter_on: "The filter changes the colour of all the light that reaches the sensor.",
    },
    last: "A white balance holds while the light that reaches the sensor from a white card keeps its colour.",
  },
  lamp_only_balance: {
    stem: {
      night: (p: { depth: string; distance: string; kelvin: string }) =>
        `On a night dive down to ${p.depth}, two video lights of ${p.kelvin} are your only light. You film everything from ${p.distance}, lights and camera side by side. What is enough for white to stay white?`,
      moving: (p: { near: string; far: string; water: string; kelvin: string }) =>
        `On a night dive in ${p.water}, two video lights of ${p.kelvin} are your only light. You film a crab from ${p.near}, then part of a wreck from ${p.far}, lights and camera side by side. What do you need for white to stay white?`,
      day: (p: { from: string; to: string; distance: string; water: string }) =>
        `By day you swim down a slope from ${p.from} to ${p.to} in ${p.water} and film in daylight alone, always from ${p.distance}. What do you need for white to stay white?`,
    },
    option: {
      once: [
        "One white balance on a card, at the start",
        "One white balance, set on a card where you start filming, for the whole dive",
      ],
      depth: [
        "A white balance on a card, set again as the depth changes",
        "A new white balance at new depths",
      ],
      distance: [
        "A white balance on a card, set again as the distance to the subject changes",
        "A new white balance at new distances",
      ],
      surface: [
        "The white balance of the surface",
        "The white balance that was right in daylight at the surface, kept for the whole dive",
      ],
    },
    loss: (p: { red: string; green: string; blue: string }) =>
      `The water between light, subject and camera takes ${p.red} of red, ${p.green} of green and ${p.blue} of blue, at any depth.`,
    losses: (p: { near: string; far: string; nearMore: string; farMore: string }) =>
      `From ${p.near} the water on the way takes ${p.nearMore} more of red than of green, from ${p.far} it takes ${p.farMore} more.`,
    depths: (p: { depths: string[] }) =>
      `Each new balance is due once a white card shows a clear colour cast: here at about ${list(p.depths)}.`,
    last: {
      night:
        "The lights make all the light, and its way through the water stays the same: one balance on a card at filming distance is enough.",
      moving:
        "The lights make all the light, but from farther away it crosses more water, which takes more red: set the balance again at the new distance.",
      day: "Daylight changes colour with the water above you: set the balance again as you go down.",
    },
  },
  kelvin_order: {
    stem: "These white video lights differ in colour temperature. Put them in order, the reddest light at the top and the bluest at the bottom.",
    presetStem: (p: { light: string }) =>
      `At night you light a white slate with a video light of ${p.light}, close up, and film it at different Kelvin presets of the white balance. Put the presets in order of how the slate looks, the bluest picture at the top and the reddest at the bottom.`,
    preset: (p: { kelvin: string }) => `Preset of ${p.kelvin}`,
    presetRule:
      "A preset tells the camera which light to take for white. The camera makes up for what it expects: at a low preset for reddish light, so the picture turns blue.",
    presetLast: (p: { order: string[] }) =>
      `The higher the preset, the redder the picture. From bluest to reddest: ${list(p.order)}.`,
    entry: (p: { kelvin: string }) => `Video light of ${p.kelvin}`,
    last: (p: { order: string[] }) =>
      `The higher the colour temperature, the bluer the light. From reddest to bluest: ${list(p.order)}.`,
  },
  kelvin_meaning: {
    stem: {
      deep: (p: { scene: string; depth: string }) =>
        `${p.scene} You film in daylight alone at ${p.depth}, without a card. Which Kelvin value describes this light?`,
      shallow: (p: { scene: string; depth: string }) =>
        `${p.scene} You film in daylight alone at ${p.depth}, without a card. Which Kelvin value describes this light?`,
    },
    meterStem: (p: { depth: string; kelvin: string; duv: string }) =>
      `At ${p.depth} a colour meter reads ${p.kelvin} in daylight, and a distance of ${p.duv} from the colours of glowing bodies (Duv). Which Kelvin value describes this light?`,
    bluer: (p: { surface: string }) =>
      `The water above has taken some red, so the light is bluer than the ${p.surface} of the surface: its Kelvin value is higher.`,
    option: {
      none: [
        "No Kelvin value does",
        "None: this light has a colour that no Kelvin value stands for, as it is too far from white",
      ],
      number: (p: { kelvin: string }) => [`${p.kelvin}`, `${p.kelvin}, set by hand as a fixed Kelvin preset`],
    },
    distance: (p: { x: string; y: string; duv: string }) =>
      `The light has the chromaticity x = ${p.x}, y = ${p.y}, which is ${p.duv} from the colours of glowing bodies (Duv).`,
    last: {
      none: "Beyond a Duv of 0.05 a colour temperature has no meaning (CIE). Use a card: it shows the camera the light as it is.",
      number: (p: { kelvin: string }) =>
        `That is near enough for a colour temperature to have a meaning (Duv up to 0.05, CIE): about ${p.kelvin}.`,
    },
  },
  mired_shift: {
    stem: (p: { from: string; to: string }) =>
      `Which shift in mired turns light of ${p.from} into light of ${p.to}? A shift towards warmer light counts as positive.`,
    filterStem: (p: { from: string; shift: string }) =>
      `A video light of ${p.from} gets a filter with a shift of ${p.shift} mired (positive is warmer). What colour temperature does it have then?`,
    each: (p: { from: number; to: number; fromMired: string; toMired: string }) =>
      `1 000 000 / ${p.from} = ${p.fromMired} mired and 1 000 000 / ${p.to} = ${p.toMired} mired.`,
    last: (p: { fromMired: string; toMired: string; shift: string; rounded: string }) =>
      `The shift is the difference: ${p.toMired} - ${p.fromMired} = ${p.shift} mired, rounded to ${p.rounded} mired.`,
    added: (p: { from: number; fromMired: string; shift: string; sum: string }) =>
      `1 000 000 / ${p.from} = ${p.fromMired} mired. With the shift: ${p.fromMired} + (${p.shift}) = ${p.sum} mired.`,
    back: (p: { sum: string; kelvin: string }) => `1 000 000 / ${p.sum} = ${p.kelvin} K.`,
  },
};
