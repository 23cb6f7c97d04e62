/** Texts of questions on light where a dive goes: a balance that is kept, haze, the sun's side and height, the sea floor. */
import { series } from "./common.js";

/** An entry inside a sentence. */
const within = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
const less = (p: { each: { name: string; stops: string }[] }): string =>
  `Against the first: ${series(p.each.map(({ name, stops }) => `${within(name)} ${stops} less`))}.`;

export const DIVE_EN = {
  kept_balance: {
    stem: (p: { from: string; to: string; water: string }) =>
      `In ${p.water} you set the white balance on a card at ${p.from}. You keep it and film at ${p.to}, in daylight alone and rightly exposed. What does a white slate look like there?`,
    nightStem: (p: { from: string; to: string; water: string }) =>
      `On a night dive in ${p.water} your video lights are your only light. You set the white balance on a card at ${p.from}. You keep it and film at ${p.to}, from the same distance and rightly exposed. What does a white slate look like there?`,
    option: {
      red: [
        "Too red or too pink",
        "Too red or too pink, as if the camera made up for more water than there is",
      ],
      cold: [
        "Too blue or too green",
        "Too blue or too green, as if the camera made up for less water than there is",
      ],
      same: ["As white as on the card", "As white as on the card: the balance still holds there"],
    },
    raised: (p: { from: string; to: string; fromStops: string; toStops: string }) =>
      `At ${p.from} the balance raises red against green by ${p.fromStops}, at ${p.to} it would have to be ${p.toStops}.`,
    amountStem: (p: { from: string; to: string; water: string; fromStops: string; toStops: string }) =>
      `In ${p.water} the white balance from a card at ${p.from} raises red against green by ${p.fromStops}. At ${p.to} a new one would raise it by ${p.toStops}. You keep the old one and film at ${p.to} in daylight. How is red in a white slate there, against green?`,
    strong: (p: { stops: string }) => `Too strong by ${p.stops}`,
    weak: (p: { stops: string }) => `Too weak by ${p.stops}`,
    difference: (p: { more: string; less: string; stops: string }) =>
      `The two balances differ by ${p.more} - ${p.less} = ${p.stops}.`,
    last: {
      up: "Farther up more red gets through, but the old balance still makes up for more water: white turns red.",
      down: "Deeper down less red gets through, and the old balance raises it by too little: white turns blue or green.",
      night: "The lights make all the light, and its way stays the same: at any depth the balance holds.",
      little:
        "White has to shift before a balance is due again, and here nobody sees it shift: the balance holds.",
    },
  },
  contrast_order: {
    stem: (p: { depth: string }) =>
      `You film by daylight at ${p.depth}. Put these in order of how much contrast the water leaves your subject, the most at the top.`,
    entry: (p: { water: string; distance: string }) => `From ${p.distance} in ${p.water}`,
    left: (p: { each: { name: string; percent: string }[] }) =>
      `Contrast left: ${series(p.each.map(({ name, percent }) => `${within(name)} ${percent}`))}.`,
    last: "Every metre between camera and subject takes its share of the contrast, and turbid water a larger one: come closer, under control, before you blame the lens.",
  },
  sun_or_depth: {
    stem: (p: { water: string }) =>
      `The sun stands 50° high in a clear sky over ${p.water}. Put these in order of how much light the side of your subject has that you film, the most at the top.`,
    entry: {
      behind_camera: (p: { depth: string }) => `${p.depth} deep, the sun behind you`,
      beside: (p: { depth: string }) => `${p.depth} deep, the sun beside you`,
      in_frame: (p: { depth: string }) => `${p.depth} deep, the sun in the frame`,
    },
    less,
    last: "In clear water, turning into the sun costs as much light as many metres of depth: look where the sun stands before you raise the ISO.",
  },
  brightest_hour: {
    stem: (p: { water: string; depth: string }) =>
      `You plan a dive at ${p.depth} in ${p.water}. Put these in order of how much light there is on your subject, the most at the top.`,
    deepStem: (p: { water: string }) =>
      `You plan dives in ${p.water}. Put these in order of how much light there is on your subject, the most at the top.`,
    entry: {
      clear: (p: { sun: string }) => `Clear sky, the sun ${p.sun} high`,
      overcast: (p: { sun: string }) => `Overcast sky, the sun ${p.sun} high behind it`,
    },
    deepEntry: {
      clear: (p: { sun: string; depth: string }) => `At ${p.depth} under a clear sky, the sun ${p.sun} high`,
      overcast: (p: { sun: string; depth: string }) =>
        `At ${p.depth} under an overcast sky, the sun ${p.sun} high`,
    },
    less,
    last: "A low sun takes a long way through the air and the water, and thick cloud costs some two stops: the hours around noon are the bright ones.",
  },
  floor_light: {
    stem: (p: { water: string; depth: string }) =>
      `An upright subject at ${p.depth} in ${p.water} is lit by daylight. Put these sea floors in order of how much light they add to it, the most at the top.`,
    entry: {
      sand: (p: { height: string }) => `Pale sand, ${p.height} below it`,
      coral: (p: { height: string }) => `A coral floor, ${p.height} below it`,
      seagrass: (p: { height: string }) => `A seagrass meadow, ${p.height} below it`,
    },
    added: (p: { each: { name: string; stops: string }[] }) =>
      `The floor adds: ${series(p.each.map(({ name, stops }) => `${within(name)} ${stops}`))}.`,
    last: "Pale sand sends much of the light back up, dark plants hardly any, and water takes its share on the way: filming low over sand is like using a reflector.",
  },
};
