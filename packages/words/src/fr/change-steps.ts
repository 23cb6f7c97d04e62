import type { ChangeStepCodes, FilterChange, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import { between, capital, neutral, stops } from "./format.js";

/** Ce qui se monte et se retire sous l’eau, et pourquoi. */
export const changeSteps: Texts<ChangeStepCodes, StepText> = {
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Emportez ${filterName(p.filter)}, propre, ${MOUNTS[p.mount].name}, pour vous en servir ${between(p.from_m, p.to_m, u)}${p.from_start ? " ; qu’il soit déjà devant l’objectif quand vous commencez à filmer" : ""}.`,
    why: worth(p, u),
  }),
  neutral_density: (p) => ({
    text: p.stays
      ? `Montez ${neutral(p.density)}${onMount(p.mount)} ; il reste en place pendant toute la plongée.`
      : `Emportez ${neutral(p.density)}${onMount(p.mount)} ; commencez avec lui devant l’objectif.`,
    why: `Là où il fait le plus clair, ces réglages laissent entrer ${stops(p.stops)} de lumière en trop.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, réglez sur ${setting(p)}, puis refaites la balance des blancs.`,
    why: "À partir d’ici, le filtre améliore les couleurs.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, réglez sur ${setting(p)}, puis refaites la balance des blancs.`,
    why: "À partir d’ici, le filtre n’améliore plus les couleurs.",
  }),
  neutral_off: (p) => ({
    text: `Retirez le filtre ND, puis réglez sur ${setting(p)}.`,
    why: "Sans lui, il n’y a plus trop de lumière.",
  }),
  neutral_on: (p) => ({
    text: `Remettez le filtre ND, puis réglez sur ${setting(p)}.`,
    why: "À partir d’ici, sans lui, il y a trop de lumière.",
  }),
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: {
    on: "basculez le filtre devant l’objectif",
    off: "escamotez le filtre",
    name: "sur son support basculant",
  },
  clip_on: { on: "clipsez le filtre", off: "retirez le filtre", name: "sur son support à clip" },
};

const onMount = (mount: FilterChange): string => (mount === "none" ? "" : ` ${MOUNTS[mount].name}`);
