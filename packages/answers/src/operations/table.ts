import { mountingExamples, sceneExamples } from "@sunfathom/contract";
import type { Calculation } from "./calculation.js";
import { calculations, type OperationName } from "./calculations.js";

/** What a calculation is called where it is described, and scenes to try it with. */
interface Described {
  /** `operationId` of its POST, and of its GET twin. */
  postId: string;
  getId: string;
  summary: string;
  description: string;
  examples: readonly Example[];
}

interface Example {
  name: string;
  summary: string;
  scene: object;
}

/** A calculation as a service offers it. */
export type Operation = Calculation & Described;

// Apart from the calculations: whoever computes without a service describes nothing.
const described: Readonly<Record<OperationName, Described>> = {
  attenuation: {
    postId: "computeAttenuation",
    getId: "readAttenuation",
    summary: "How the water takes the light",
    description:
      "Per depth: the spectrum that is left, the loss of red, green and blue, of light as the eye weighs it and of photosynthetically active radiation, the colour of the light, and how far red reaches.",
    examples: chosen(sceneExamples, ["outer_reef_morning", "harbour_wall_afternoon"]),
  },
  "filter-choice": {
    postId: "computeFilterChoice",
    getId: "readFilterChoice",
    summary: "Which filter to mount on the lens",
    description:
      "None, red, magenta or another kind, its density, the depths that it serves, and the runner-up with how much it loses by. Judged by the colours of a 24-patch chart after the camera has done what it can.",
    examples: chosen(sceneExamples, ["outer_reef_morning", "harbour_wall_afternoon", "night_wreck"]),
  },
  "exposure-loss": {
    postId: "computeExposureLoss",
    getId: "readExposureLoss",
    summary: "Where light is lost, and what pays for it",
    description:
      "Stops lost to the surface, the water, the distance and the filters; the ISO speed, aperture and exposure time that pay for them; what is missing or too much where they do not fit the camera.",
    examples: chosen(sceneExamples, ["outer_reef_morning", "reef_with_lamps"]),
  },
  "mixed-light": {
    postId: "computeMixedLight",
    getId: "readMixedLight",
    summary: "Lamps against daylight",
    description:
      "Lamp light over daylight per channel and depth, how far the two split the picture's colour after balancing, and the way out: lamps off, a filter on the lamps, balancing to the lamps, or coming closer.",
    examples: chosen(sceneExamples, ["reef_with_lamps", "night_wreck"]),
  },
  "white-balance": {
    postId: "computeWhiteBalance",
    getId: "readWhiteBalance",
    summary: "How to balance white, and where again",
    description:
      "Per depth: the channel gains that make a grey card neutral and whether the camera reaches them; the depths at which to balance again on the way down and up; for lamps, what their own kelvin setting would leave.",
    examples: chosen(sceneExamples, ["outer_reef_morning", "night_wreck"]),
  },
  "colour-recovery": {
    postId: "computeColourRecovery",
    getId: "readColourRecovery",
    summary: "What grading can still bring back",
    description:
      "Per depth, without and with the scene's filter: electrons, signal over noise and code values of each channel, how much of red is red light, and the depths at which it is no longer acceptable, gone, or not to be trusted.",
    examples: chosen(sceneExamples, ["outer_reef_morning", "reef_with_lamps"]),
  },
  "dive-advice": {
    postId: "computeDiveAdvice",
    getId: "readDiveAdvice",
    summary: "The whole job for one dive",
    description:
      "Filter, exposure, white balance and lamps as one plan in the order in which things are done, each line with its number and its reason, and what to take from the shelf when `kit` is given.",
    examples: chosen(sceneExamples, [
      "outer_reef_morning",
      "harbour_wall_afternoon",
      "night_wreck",
      "reef_with_lamps",
    ]),
  },
  "filter-mounting": {
    postId: "computeFilterMounting",
    getId: "readFilterMounting",
    summary: "Where the filter goes on this lens and port",
    description:
      "On the lens, before the port or behind the lens, and what holds it; the rings to screw on or to buy; what filter and rings take from the corners; for a sheet behind the lens its size and what it does to focus; and what to do, step by step.",
    examples: chosen(mountingExamples, ["flat_port_and_rings", "fisheye_behind_dome", "action_camera_flip"]),
  },
};

/** Every calculation with its description. */
export const operations: readonly (Operation & { name: OperationName })[] = calculations.map(
  (calculation) => ({
    ...calculation,
    ...described[calculation.name],
  }),
);

function chosen<Name extends string>(
  examples: Readonly<Record<Name, { summary: string; scene: object }>>,
  names: readonly Name[],
): Example[] {
  return names.map((name) => ({ name, ...examples[name] }));
}
