import type { ChangeStepCodes, FilterChange, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import { capital, fromTo, neutral, stops } from "./format.js";

/** Qué se pone y se quita del objetivo bajo el agua, y por qué. */
export const changeSteps: Texts<ChangeStepCodes, StepText> = {
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Lleve ${filterName(p.filter)}, limpio y ${MOUNTS[p.mount].name}, para usarlo ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? "; téngalo ya en el objetivo cuando empiece a filmar" : ""}.`,
    why: worth(p, u),
  }),
  neutral_density: (p) => ({
    text: p.stays
      ? `Monte ${neutral(p.density)}${onMount(p.mount)}; se queda puesto toda la inmersión.`
      : `Lleve ${neutral(p.density)}${onMount(p.mount)}; empiece con él puesto en el objetivo.`,
    why: `Donde más luz hay, estos ajustes dejan entrar ${stops(p.stops)} de luz de más.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, pase a ${setting(p)} y repita el balance de blancos.`,
    why: "A partir de aquí el filtro mejora los colores.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, pase a ${setting(p)} y repita el balance de blancos.`,
    why: "A partir de aquí el filtro ya no mejora los colores.",
  }),
  neutral_off: (p) => ({
    text: `Quite el filtro ND y pase a ${setting(p)}.`,
    why: "Sin él ya no hay demasiada luz.",
  }),
  neutral_on: (p) => ({
    text: `Vuelva a poner el filtro ND y pase a ${setting(p)}.`,
    why: "A partir de aquí, sin él hay demasiada luz.",
  }),
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: {
    on: "baje el filtro delante del objetivo",
    off: "aparte el filtro",
    name: "en su portafiltros abatible",
  },
  clip_on: { on: "encaje el filtro", off: "quite el filtro", name: "en su soporte de clip" },
};

const onMount = (mount: FilterChange): string => (mount === "none" ? "" : ` ${MOUNTS[mount].name}`);
