import type { FilterMountingTexts } from "../calculation-texts.js";
import { cautions } from "./cautions.js";
import { mountingCauses } from "./mounting-causes.js";
import { mountingCautions } from "./mounting-cautions.js";
import { mountingProcedure } from "./mounting-procedure.js";
import { mountingTake } from "./mounting-take.js";
import { filterMountingReasons } from "./reasons/filter-mounting.js";

export const filterMounting: FilterMountingTexts = {
  reasons: filterMountingReasons,
  causes: mountingCauses,
  cautions: { ...cautions, ...mountingCautions },
  procedure: mountingProcedure,
  take: mountingTake,
};
