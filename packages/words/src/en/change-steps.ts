import type { ChangeStepCodes, Mount, StepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { capital } from "./capital.js";
import { setting } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import { neutral, span, stops } from "./format.js";

/** English texts of what is on the lens already, goes on it and comes off it under water, and why. */
export const changeSteps: Texts<ChangeStepCodes & Pick<StepCodes, "keep_filter">, StepText> = {
  keep_filter: (p, u) => ({
    text: `Leave ${filterName(p.filter)} on the lens.${p.better ? ` ${capital(filterName(p.better))} is better by too little to change for.` : ""}`,
    why: worth(p, u),
  }),
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Carry ${filterName(p.filter)} on ${MOUNTS[p.mount].name}, clean, for ${span(p.from_m, p.to_m, u)}${p.from_start ? "; have it on the lens where you begin filming" : ""}.`,
    why: worth(p, u),
  }),
  neutral_density: (p) => ({
    text: `${p.stays ? "Mount" : "Carry"} ${neutral(p.density)}${p.mount === "none" ? "" : ` on ${MOUNTS[p.mount].name}`}; ${p.stays ? "it stays on for the whole dive" : "start with it on the lens"}.`,
    why: `Where it is brightest, these settings let in ${stops(p.stops)} too much light.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, set ${setting(p)} and white-balance again.`,
    why: "From here on the filter improves the colours.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, set ${setting(p)} and white-balance again.`,
    why: "From here on the filter does not improve the colours.",
  }),
  neutral_off: (p) => ({
    text: `Take the ND off and set ${setting(p)}.`,
    why: "It is no longer too bright without it.",
  }),
  neutral_on: (p) => ({
    text: `Put the ND back on and set ${setting(p)}.`,
    why: "From here on it is too bright without it.",
  }),
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: { on: "swing the filter in", off: "swing the filter out", name: "its flip mount" },
  clip_on: { on: "clip the filter on", off: "take the filter off", name: "its clip mount" },
};
