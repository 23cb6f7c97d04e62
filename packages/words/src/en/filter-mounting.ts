import type { CautionCode, MountingCauses, MountingCautionCode } from "@sunfathom/planner";
import type { AnswerTexts } from "../answer-texts.js";
import { cautions } from "./cautions.js";
import { mountingCauses } from "./mounting-causes.js";
import { mountingCautions } from "./mounting-cautions.js";

export const filterMounting: AnswerTexts<
  Record<never, never>,
  MountingCauses,
  CautionCode | MountingCautionCode
> = { reasons: {}, causes: mountingCauses, cautions: { ...cautions, ...mountingCautions } };
