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
import { type Calculation, type Plan, taking } from "./calculation.js";

const onLight = taking(lightScene);
const onMounting = taking(mountingScene);

/** Every calculation. Another one is one more entry here, with its answer's schema in the contract. */
export const calculations = [
  onLight({
    name: "attenuation",
    path: "/v1/attenuation",
    answer: "AttenuationAnswer",
    plan: attenuation satisfies Plan<ReturnType<typeof attenuation>, AttenuationAnswer>,
  }),
  onLight({
    name: "filter-choice",
    path: "/v1/filter-choice",
    answer: "FilterChoiceAnswer",
    plan: filterChoice satisfies Plan<ReturnType<typeof filterChoice>, FilterChoiceAnswer>,
  }),
  onLight({
    name: "exposure-loss",
    path: "/v1/exposure-loss",
    answer: "ExposureLossAnswer",
    plan: exposureLoss satisfies Plan<ReturnType<typeof exposureLoss>, ExposureLossAnswer>,
  }),
  onLight({
    name: "mixed-light",
    path: "/v1/mixed-light",
    answer: "MixedLightAnswer",
    plan: mixedLight satisfies Plan<ReturnType<typeof mixedLight>, MixedLightAnswer>,
  }),
  onLight({
    name: "white-balance",
    path: "/v1/white-balance",
    answer: "WhiteBalanceAnswer",
    plan: whiteBalance satisfies Plan<ReturnType<typeof whiteBalance>, WhiteBalanceAnswer>,
  }),
  onLight({
    name: "colour-recovery",
    path: "/v1/colour-recovery",
    answer: "ColourRecoveryAnswer",
    plan: colourRecovery satisfies Plan<ReturnType<typeof colourRecovery>, ColourRecoveryAnswer>,
  }),
  onLight({
    name: "dive-advice",
    path: "/v1/dive-advice",
    answer: "DiveAdviceAnswer",
    plan: diveAdvice satisfies Plan<ReturnType<typeof diveAdvice>, DiveAdviceAnswer>,
  }),
  onMounting({
    name: "filter-mounting",
    path: "/v1/filter-mounting",
    answer: "FilterMountingAnswer",
    plan: filterMounting satisfies Plan<
      ReturnType<typeof filterMounting>,
      FilterMountingAnswer,
      FilterMountingScene
    >,
  }),
] as const;

export type OperationName = (typeof calculations)[number]["name"];

/** @throws Error for a name that the table does not have */
export function calculationOf(name: OperationName): Calculation {
  const calculation = calculations.find((entry) => entry.name === name);
  if (calculation === undefined) throw new Error(`There is no calculation ${name}.`);
  return calculation;
}
