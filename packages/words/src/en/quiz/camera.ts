/** Texts of questions on the camera: time, code values, its automatics, and light that it meters. */
import { list, series } from "./common.js";

const pairsOf = (pairs: { left: string; right: string }[]): string =>
  series(pairs.map(({ left, right }) => `${left}: ${right.charAt(0).toLowerCase()}${right.slice(1)}`));

export const CAMERA_EN = {
  shutter_angle: {
    stem: (p: { fps: number; angle: string }) =>
      `You film at ${p.fps} frames per second with a shutter angle of ${p.angle}. The exposure time is 1/x s. What is x?`,
    changeStem: (p: { fps: number; angle: string; toFps: number; toAngle: string }) =>
      `You film at ${p.fps} frames per second with a shutter angle of ${p.angle}, and change to ${p.toFps} frames per second with ${p.toAngle}. How much light does each frame lose?`,
    time: (p: { fps: number; angle: string; x: string }) =>
      `A frame lasts 1/${p.fps} s, and the shutter is open for ${p.angle} of 360°: 1/${p.x} s.`,
    last: (p: { x: string }) => `x = ${p.x}.`,
    change: (p: { from: string; to: string; stops: string }) =>
      `From 1/${p.from} s to 1/${p.to} s: log2(${p.to} / ${p.from}) = ${p.stops}.`,
  },
  histogram_code: {
    stem: (p: { percent: string }) =>
      `Your camera records in 8 bits (0 to 255) with the usual video curve (Rec. 709: signal = 1.099 × light^0.45 - 0.099, both from 0 to 1), and a surface that reflects everything would just reach 255. At which value does a surface of ${p.percent} reflectance lie in the histogram?`,
    underStem: (p: { percent: string; stops: string }) =>
      `Your camera records in 8 bits (0 to 255) with the usual video curve (Rec. 709: signal = 1.099 × light^0.45 - 0.099, both from 0 to 1), exposed ${p.stops} lower than where a surface that reflects everything would just reach 255. At which value does a surface of ${p.percent} reflectance lie in the histogram?`,
    light: (p: { share: string }) => `Its light is ${p.share} of the light that reaches 255.`,
    last: (p: { share: string; value: string }) =>
      `The curve is 1.099 × light^0.45 - 0.099: with ${p.share} of the light that gives ${p.value} of 255.`,
  },
  codes_per_stop: {
    logStem: (p: { bits: number; stops: number }) =>
      `A log curve spreads ${p.bits} bits evenly over ${p.stops} stops. How many code values does each stop have?`,
    linearStem: (p: { bits: number; stop: number }) =>
      `A linear recording has ${p.bits} bits. The brightest stop is the first. How many code values does stop number ${p.stop} have?`,
    values: (p: { bits: number; values: number }) =>
      `${p.bits} bits are 2^${p.bits} = ${p.values} code values.`,
    log: (p: { values: number; stops: number; each: string }) =>
      `Spread evenly: ${p.values} / ${p.stops} = ${p.each}.`,
    linear: (p: { stop: number; each: string }) =>
      `The brightest stop takes half of the values, each stop after it half of what is left: ${p.each} for stop ${p.stop}.`,
  },
  card_reading: {
    stem: (p: { water: string; depth: string; red: string; green: string }) =>
      `At ${p.depth} in ${p.water} a white card, filmed in linear code values without a white balance, reads ${p.red} in red and ${p.green} in green. By how much does the white balance have to raise red against green?`,
    videoStem: (p: { water: string; depth: string; red: string; green: string }) =>
      `At ${p.depth} in ${p.water} a white card, filmed in 8 bits with the usual video curve and without a white balance, reads ${p.red} in red and ${p.green} in green. The curve (Rec. 709) read backwards: light = ((code / 255 + 0.099) / 1.099)^2.22. By how many stops of light is red behind green?`,
    light: (p: { red: string; green: string }) =>
      `Back to light: ${p.red} in red and ${p.green} in green, of the light that reaches 255.`,
    ratio: (p: { red: string; green: string; ratio: string }) =>
      `Red has to grow by the ratio of the two: ${p.green} / ${p.red} = ${p.ratio}.`,
    last: (p: { ratio: string; stops: string }) => `In stops: log2(${p.ratio}) = ${p.stops}.`,
  },
  sun_turn: {
    stem: (p: { depth: string; water: string; loss: string; iso: string; side: string }) =>
      `At ${p.depth} in ${p.water} the sun is behind you and your subject is exposed right at ${p.iso}. You swim round it until the sun is ${p.side}, and the side that you film has ${p.loss} less light. Aperture and time stay. Which ISO exposes the subject right, on a dial in thirds of a stop?`,
    deeperStem: (p: {
      depth: string;
      water: string;
      loss: string;
      iso: string;
      side: string;
      to: string;
      more: string;
    }) =>
      `At ${p.depth} in ${p.water} the sun is behind you and your subject is exposed right at ${p.iso}. You turn to another one with the sun ${p.side}: its side towards you has ${p.loss} less light. Then you follow it down to ${p.to}, which costs ${p.more} more. Aperture and time stay. Which ISO exposes it right there, on a dial in thirds of a stop?`,
    side: { beside: "beside you", in_frame: "in the frame" },
    sum: (p: { turn: string; more: string; loss: string }) => `Stops add: ${p.turn} + ${p.more} = ${p.loss}.`,
    loss: (p: { iso: number; loss: string; stops: string; result: string }) =>
      `${p.loss} less light needs as much more ISO: ${p.iso} × 2^${p.stops} ≈ ${p.result}.`,
    last: (p: { result: string; others: string[] }) =>
      p.others.length === 0
        ? `The dial's nearest value is ISO ${p.result}.`
        : `The dial's nearest value is ISO ${p.result}; its neighbour ISO ${list(p.others)} is right as well.`,
  },
  loss_budget: {
    stem: (p: { parts: string[]; water: string; depth: string }) =>
      `On its way to the sensor, daylight at ${p.depth} in ${p.water} loses ${list(p.parts)}. How much is that together?`,
    factorStem: (p: { parts: string[]; water: string; depth: string }) =>
      `On its way to the sensor, daylight at ${p.depth} in ${p.water} loses ${list(p.parts)}. By which factor is it weaker in the end?`,
    part: {
      depth: (p: { stops: string }) => `${p.stops} in the water above`,
      distance: (p: { stops: string }) => `${p.stops} between subject and camera`,
      port: (p: { stops: string }) => `${p.stops} at the port`,
      filter: (p: { stops: string }) => `${p.stops} in a filter`,
    },
    sum: (p: { parts: string; sum: string }) => `Stops add: ${p.parts} = ${p.sum}.`,
    last: (p: { sum: string; factor: string }) => `Each stop is a factor of 2: 2^${p.sum} = ${p.factor}.`,
  },
  auto_settings: {
    stem: "An action camera is on automatic. Match each fault of the footage with the setting that you take off automatic to cure it.",
    pairs: {
      colour_jumps: ["The colour changes from shot to shot", "White balance"],
      brightness_pumps: ["The picture darkens as a bright fish swims by", "Exposure"],
      noise: ["Dark scenes are full of noise", "Highest ISO"],
      smear: ["Stabilised pictures smear in dim light", "Longest exposure time"],
      hunting: ["The picture goes soft now and then", "Focus"],
      edges: ["Outlines have bright and dark rims", "Sharpening"],
    },
    last: (p: { pairs: { left: string; right: string }[] }) =>
      `A camera on automatic changes its settings as the picture changes. ${pairsOf(p.pairs)}.`,
  },
  mount_faults: {
    stem: "You look through your footage. Match each fault with its cause.",
    pairs: {
      dust: [
        "Small dark spots, sharp, at the same place in every clip",
        "Dust on the sensor or on a sheet behind the lens",
      ],
      bubbles: ["Soft round patches that shift from clip to clip", "Bubbles between port and filter"],
      corners: ["Dark corners that go as you zoom in", "A ring or filter too small or too far in front"],
      tape: ["One side out of focus", "A sheet behind the lens that does not lie flat"],
      lost: ["No red at all from half way through the dive", "A filter that was not swung back in front"],
      reflection: [
        "A pale image of the lens in front of dark water",
        "Light that falls on the port from behind the rig",
      ],
    },
    last: (p: { pairs: { left: string; right: string }[] }) => `${pairsOf(p.pairs)}.`,
  },
};
