import type {
  AttenuationAnswer,
  ColourRecoveryAnswer,
  DiveAdviceAnswer,
  ExposureLossAnswer,
  FilterChoiceAnswer,
  FilterMountingAnswer,
  MixedLightAnswer,
  WhiteBalanceAnswer,
} from "@sunfathom/contract";
import {
  attenuation,
  colourRecovery,
  diveAdvice,
  exposureLoss,
  type FilterMountingScene,
  filterChoice,
  filterMounting,
  mixedLight,
  whiteBalance,
} from "@sunfathom/planner";
import { lightScene } from "../scene/light-scene.js";
import { mountingScene } from "../scene/mounting-scene.js";
import { type Operation, type Plan, taking } from "./operation.js";

const onLight = taking(lightScene);
const onMounting = taking(mountingScene);

/** Every calculation. Another one is one more entry here, with its answer's schema in the contract. */
export const operations = [
  onLight({
    name: "attenuation",
    path: "/v1/attenuation",
    postId: "computeAttenuation",
    getId: "readAttenuation",
    summary: "How the water takes the light",
    description:
      "Per depth: the spectrum that is left, the loss of red, green and blue, of light as the eye weighs it and of photosynthetically active radiation, the colour of the light, and how far red reaches.",
    answer: "AttenuationAnswer",
    plan: attenuation satisfies Plan<ReturnType<typeof attenuation>, AttenuationAnswer>,
    examples: ["outer_reef_morning", "harbour_wall_afternoon"],
  }),
  onLight({
    name: "filter-choice",
    path: "/v1/filter-choice",
    postId: "computeFilterChoice",
    getId: "readFilterChoice",
    summary: "Which filter to mount on the lens",
    description:
      "None, red, magenta or another kind, its density, the depths that it serves, and the runner-up with how much it loses by. Judged by the colours of a 24-patch chart after the camera has done what it can.",
    answer: "FilterChoiceAnswer",
    plan: filterChoice satisfies Plan<ReturnType<typeof filterChoice>, FilterChoiceAnswer>,
    examples: ["outer_reef_morning", "harbour_wall_afternoon", "night_wreck"],
  }),
  onLight({
    name: "exposure-loss",
    path: "/v1/exposure-loss",
    postId: "computeExposureLoss",
    getId: "readExposureLoss",
    summary: "Where light is lost, and what pays for it",
    description:
      "Stops lost to the surface, the water, the distance and the filters; the ISO speed, aperture and exposure time that pay for them; what is missing or too much where they do not fit the camera.",
    answer: "ExposureLossAnswer",
    plan: exposureLoss satisfies Plan<ReturnType<typeof exposureLoss>, ExposureLossAnswer>,
    examples: ["outer_reef_morning", "reef_with_lamps"],
  }),
  onLight({
    name: "mixed-light",
    path: "/v1/mixed-light",
    postId: "computeMixedLight",
    getId: "readMixedLight",
    summary: "Lamps against daylight",
    description:
      "Lamp light over daylight per channel and depth, how far the two split the picture's colour after balancing, and the way out: lamps off, a filter on the lamps, balancing to the lamps, or coming closer.",
    answer: "MixedLightAnswer",
    plan: mixedLight satisfies Plan<ReturnType<typeof mixedLight>, MixedLightAnswer>,
    examples: ["reef_with_lamps", "night_wreck"],
  }),
  onLight({
    name: "white-balance",
    path: "/v1/white-balance",
    postId: "computeWhiteBalance",
    getId: "readWhiteBalance",
    summary: "How to balance white, and where again",
    description:
      "Per depth: the channel gains that make a grey card neutral and whether the camera reaches them; the depths at which to balance again on the way down and up; for lamps, what their own kelvin setting would leave.",
    answer: "WhiteBalanceAnswer",
    plan: whiteBalance satisfies Plan<ReturnType<typeof whiteBalance>, WhiteBalanceAnswer>,
    examples: ["outer_reef_morning", "night_wreck"],
  }),
  onLight({
    name: "colour-recovery",
    path: "/v1/colour-recovery",
    postId: "computeColourRecovery",
    getId: "readColourRecovery",
    summary: "What grading can still bring back",
    description:
      "Per depth, without and with the scene's filter: electrons, signal over noise and code values of each channel, how much of red is red light, and the depths at which it is no longer acceptable, gone, or not to be trusted.",
    answer: "ColourRecoveryAnswer",
    plan: colourRecovery satisfies Plan<ReturnType<typeof colourRecovery>, ColourRecoveryAnswer>,
    examples: ["outer_reef_morning", "reef_with_lamps"],
  }),
  onLight({
    name: "dive-advice",
    path: "/v1/dive-advice",
    postId: "computeDiveAdvice",
    getId: "readDiveAdvice",
    summary: "The whole job for one dive",
    description:
      "Filter, exposure, white balance and lamps as one plan in the order in which things are done, each line with its number and its reason, and what to take from the shelf when `kit` is given.",
    answer: "DiveAdviceAnswer",
    plan: diveAdvice satisfies Plan<ReturnType<typeof diveAdvice>, DiveAdviceAnswer>,
    examples: ["outer_reef_morning", "harbour_wall_afternoon", "night_wreck", "reef_with_lamps"],
  }),
  onMounting({
    name: "filter-mounting",
    path: "/v1/filter-mounting",
    postId: "computeFilterMounting",
    getId: "readFilterMounting",
    summary: "Where the filter goes on this lens and port",
    description:
      "On the lens, before the port or behind the lens, and what holds it; the rings to screw on or to buy; what filter and rings take from the corners; for a sheet behind the lens its size and what it does to focus; and what to do, step by step.",
    answer: "FilterMountingAnswer",
    plan: filterMounting satisfies Plan<
      ReturnType<typeof filterMounting>,
      FilterMountingAnswer,
      FilterMountingScene
    >,
    examples: ["flat_port_and_rings", "fisheye_behind_dome", "action_camera_flip"],
  }),
] as const;

export type OperationName = (typeof operations)[number]["name"];

const byName = new Map<string, Operation>(operations.map((operation) => [operation.name, operation]));

/** @throws Error for a name that the table does not have */
export function operationOf(name: OperationName): Operation {
  const operation = byName.get(name);
  if (operation === undefined) throw new Error(`There is no operation ${name}.`);
  return operation;
}
