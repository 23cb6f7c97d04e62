/** Texts of questions on exposure. */
import { list } from "./common.js";

export const EXPOSURE_EN = {
  pay_with_iso: {
    stem: (p: { iso: string; stops: string }) =>
      `Without a filter the picture is exposed right at ${p.iso}. You mount a filter that costs ${p.stops} of light, and leave aperture and shutter as they are. Which ISO do you set, on a dial in thirds of a stop?`,
    densityStem: (p: { iso: string; density: string }) =>
      `Without a filter the picture is exposed right at ${p.iso}. You mount a neutral-density filter of density ${p.density}, and leave aperture and shutter as they are. Which ISO do you set, on a dial in thirds of a stop?`,
    factor: (p: { density: string; factor: string }) =>
      `A density of ${p.density} is a filter factor of 10^${p.density} = ${p.factor}.`,
    byFactor: (p: { iso: number; factor: string; result: string }) =>
      `ISO grows by the filter factor: ${p.iso} × ${p.factor} ≈ ${p.result}.`,
    doubled: (p: { iso: number; stops: string; result: string }) =>
      `ISO doubles for each stop: ${p.iso} × 2^${p.stops} = ${p.result}.`,
    last: (p: { result: string; others: string[] }) =>
      p.others.length === 0
        ? `The dial's nearest value is ISO ${p.result}.`
        : `The dial's nearest value is ISO ${p.result}; its neighbour ISO ${list(p.others)} is right as well.`,
  },
  pay_with_aperture: {
    stem: (p: { f: string; stops: string }) =>
      `Without a filter the picture is exposed right at ${p.f}. You mount a filter that costs ${p.stops} of light, and leave ISO and shutter as they are. Which f-number do you set?`,
    factorStem: (p: { f: string; factor: number }) =>
      `Without a filter the picture is exposed right at ${p.f}. You mount an ND${p.factor} filter, which lets through 1/${p.factor} of the light, and leave ISO and shutter as they are. Which f-number do you set?`,
    factor: (p: { factor: number; stops: string }) => `A factor of ${p.factor} is ${p.stops}.`,
    last: (p: { f: string; stops: string; result: string }) =>
      `Each stop of more light divides the f-number by 1.41, the square root of two. ${p.stops} from ${p.f}: ${p.result}.`,
  },
  exposure_way: {
    brightStem: (p: { depth: string; f: string; iso: string; s: string; stops: string }) =>
      `At ${p.depth} you have set ${p.iso}, ${p.f} and ${p.s}, and the meter shows ${p.stops} too much light. Which of these bring the exposure closer to right?`,
    darkStem: (p: { depth: string; f: string; iso: string; s: string; stops: string }) =>
      `At ${p.depth} you have set ${p.iso}, ${p.f} and ${p.s}, and the meter shows ${p.stops} too little light. Which of these bring the exposure closer to right?`,
    option: {
      aperture: (p: { from: string; to: string }) => `Change the aperture from ${p.from} to ${p.to}`,
      iso: (p: { from: string; to: string }) =>
        `Change the ISO from ${p.from.replace("ISO ", "")} to ${p.to.replace("ISO ", "")}`,
      shutter: (p: { from: string; to: string }) => `Change the exposure time from ${p.from} to ${p.to}`,
      neutral: (p: { density: string }) => `Mount an ND filter of density ${p.density}`,
    },
    /** Two controls at once. */
    two: (p: { first: string; second: string }) =>
      `${p.first}, and ${p.second.charAt(0).toLowerCase()}${p.second.slice(1)}`,
    each: "Add up what both changes do, in stops: brighter counts plus, darker minus.",
    effect: (p: { stops: string; brighter: boolean }) =>
      `It makes the picture ${p.stops} ${p.brighter ? "brighter" : "darker"}.`,
    bright:
      "Too much light: anything that makes the picture darker helps: a higher f-number, a lower ISO, a shorter time or an ND filter.",
    dark: "Too little light: anything that makes the picture brighter helps: a lower f-number, a higher ISO or a longer time.",
  },
  more_red_light: {
    stem: (p: { depth: string; water: string }) =>
      `At ${p.depth} in ${p.water} red is weak. You change one thing and leave all else as it is. Which of these bring more red light to the sensor?`,
    doubleStem: (p: { depth: string; water: string }) =>
      `At ${p.depth} in ${p.water} red is weak. You change one thing and leave all else as it is. Which of these bring at least twice as much red light to the sensor?`,
    option: {
      apertureTo: (p: { from: string; to: string }) => `Open the aperture from ${p.from} to ${p.to}`,
      shutterTo: (p: { from: string; to: string }) => `Lengthen the time from ${p.from} to ${p.to}`,
      aperture: [
        "Open the aperture by one stop",
        "Open up one stop",
        "Open the aperture by one stop and change nothing else",
      ],
      shutter: [
        "Double the exposure time",
        "Double the time",
        "Double the exposure time and leave all else as it is",
      ],
      shallower: (p: { depth: string }) => [
        `Film such a subject at ${p.depth} instead`,
        `Film at ${p.depth}`,
      ],
      lamp: (p: { distance: string }) => [
        `Switch on a white video light ${p.distance} from the subject`,
        `Light it from ${p.distance} away`,
      ],
      iso: ["Double the ISO", "Double the ISO of the recording, with the same lens"],
      filter: ["Mount a red filter", "Mount a red filter in front of the camera's lens"],
      balance: ["Set the white balance to a higher Kelvin preset", "Set a higher Kelvin preset"],
      grade: ["Raise red in the grade", "Raise red in the grade until white comes out as white"],
    },
    feedback: {
      aperture: "A wider opening lets in more light, red included: twice as much for each stop.",
      shutter: "Light is collected for longer, red included: twice as much for each stop.",
      shallower: "Less water above takes less red.",
      shallowerBy: (p: { stops: string }) => `Less water above takes less red: here by ${p.stops}.`,
      lamp: "A video light reaches the subject over a short way and brings red with it.",
    },
    doubleLast: "Twice the light is one stop: dividing the f-number by 1.41, or doubling the time.",
    last: "Only more light on the subject, a wider opening or a longer time brings more red to the sensor.",
  },
};
