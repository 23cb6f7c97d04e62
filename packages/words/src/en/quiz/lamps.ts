/** Texts of questions on video lights, alone and against daylight. */
import type { FilterColour } from "../../quiz/colours.js";

export const LAMPS_EN = {
  mixed_verdict: {
    stem: (p: { scene: string; depth: string; distance: string; lamp: string; daylight: string }) =>
      `${p.scene} At ${p.depth} two white video lights of 5600 K light an upright subject from ${p.distance}. On the subject a meter reads ${p.daylight} of daylight and ${p.lamp} from the video lights. Which light sets the colour of the subject?`,
    channelStem: (p: { distance: string; red: string; green: string; blue: string }) =>
      `Two white video lights of 5600 K light a subject at depth from ${p.distance}. Measured channel by channel, they give ${p.red} stops in red, ${p.green} in green and ${p.blue} in blue against daylight (plus: more than daylight, minus: less). Which light sets the colour of the subject?`,
    option: {
      lamps_lead: "The video lights lead: set the white balance for them",
      daylight_leads: "Daylight leads: set the white balance for daylight",
      lights_fight: "Neither leads: both count, and they differ visibly",
    },
    compare: (p: { red: string; green: string; blue: string }) =>
      `The video lights against daylight on the subject: ${p.red} stops in red, ${p.green} stops in green and ${p.blue} stops in blue (plus means more from the video lights).`,
    last: {
      lamps_lead:
        "The video lights are at least eight times (3 stops) stronger: daylight hardly tints the subject.",
      daylight_leads: "Daylight is at least eight times (3 stops) stronger: the video lights hardly show.",
      lights_fight:
        "Neither is much stronger, and their colours differ: whatever the white balance, one of them shows a colour cast.",
    },
  },
  way_out: {
    stem: (p: { scene: string; depth: string; distance: string }) =>
      `${p.scene} At ${p.depth} you set the white balance for daylight. Two white video lights, ${p.distance} from a subject, now make it look too red against the rest of the picture. What gets rid of most of the difference and lets you keep the lights on?`,
    option: {
      lamp_filter: (p: { kind: FilterColour }) => `A ${p.kind} filter on each light`,
      red_on_lamp: ["A red filter on each light", "A red filter on each of the two video lights"],
      kelvin: ["A lower Kelvin preset of the white balance", "A lower Kelvin preset"],
      red_on_lens: ["A red filter on the lens", "A red filter in front of the lens"],
    },
    split: (p: { split: string; left: string; kind: FilterColour; density: string }) =>
      `A grey under the lights and one in daylight differ by ${p.split} (we take a colour error of about 1 as the least you can see). A ${p.kind} filter of density ${p.density} on the lights brings that down to ${p.left}.`,
    other: (p: { kind: FilterColour; left: string }) => `A ${p.kind} filter as dense would leave ${p.left}.`,
    last: {
      blue: "The lights have to become like daylight at depth: in blue ocean water it is blue, so their filter is blue. Anything that acts on the whole picture leaves the difference.",
      green:
        "The lights have to become like daylight at depth: in coastal water it is green, so their filter is green. Anything that acts on the whole picture leaves the difference.",
    },
  },
  lamp_falloff: {
    stem: (p: { near: string; far: string }) =>
      `A video light shines on a subject from ${p.near} away. You move it back to ${p.far}. How much of its light does the subject lose? Leave out what the water takes.`,
    waterStem: (p: { near: string; far: string; perMetre: string; water: string }) =>
      `A video light shines on a subject from ${p.near} away, in ${p.water}, which takes ${p.perMetre} of red light per metre. You move it back to ${p.far}. How much of its red light does the subject lose?`,
    spread: (p: { ratio: string; stops: string }) =>
      `The beam's light falls with the square of the distance, two stops for each doubling: 2 × log2(${p.ratio}) = ${p.stops}.`,
    water: (p: { more: string; perMetre: string; stops: string }) =>
      `On ${p.more} more of water it loses ${p.perMetre} per metre: ${p.stops}.`,
    waterTwice: (p: { more: string; perMetre: string; stops: string }) =>
      `It crosses ${p.more} more of water twice, to the subject and back to the camera, and loses ${p.perMetre} per metre: ${p.stops}.`,
    rigStem: (p: { near: string; far: string; perMetre: string; water: string }) =>
      `You film a subject from ${p.near} with video lights beside the camera, in ${p.water}, which takes ${p.perMetre} of red light per metre. You move back to ${p.far}, lights and camera together. How much of their red light does the picture of the subject lose?`,
    last: (p: { spread: string; water: string; total: string }) =>
      `Distance and water together: ${p.spread} + ${p.water}, about ${p.total}.`,
  },
  lamp_path: {
    stem: (p: { depth: string; water: string; perMetre: string; lamp: string; camera: string }) =>
      `On a night dive at ${p.depth} in ${p.water}, the water takes ${p.perMetre} of red light per metre. From the video light to the subject it is ${p.lamp}, from the subject to the camera ${p.camera}. How much red light does the water take from light to camera?`,
    behindStem: (p: {
      depth: string;
      water: string;
      perMetre: string;
      green: string;
      lamp: string;
      camera: string;
    }) =>
      `On a night dive at ${p.depth} in ${p.water}, a metre of water takes ${p.perMetre} of red light and ${p.green} of green light. From the video light to the subject it is ${p.lamp}, from the subject to the camera ${p.camera}. How far has red fallen behind green when the light reaches the camera?`,
    more: (p: { perMetre: string; green: string; more: string }) =>
      `A metre takes more of red than of green: ${p.perMetre} - ${p.green} = ${p.more}.`,
    path: (p: { lamp: string; camera: string; total: string }) =>
      `It goes from the video light to the subject and on to the camera: ${p.lamp} + ${p.camera} = ${p.total}.`,
    last: (p: { perMetre: string; total: string; stops: string }) =>
      `${p.perMetre} per metre over ${p.total}: ${p.stops}.`,
  },
};
