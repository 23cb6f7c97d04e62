import type { ChangeStepCodes, FilterChange, Mount } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { setting } from "./dial.js";
import { filterName, takeOff } from "./filter-name.js";
import { worth } from "./filter-worth.js";
import { capital, fromTo, neutral, stops } from "./format.js";

/** Was unter Wasser aufs Objektiv kommt und wieder herunter, und warum. */
export const changeSteps: Texts<ChangeStepCodes, StepText> = {
  carry_filter: (p, u) => ({
    text: `${takeOff(p)}Nimm ${filterName(p.filter, "wen")} ${MOUNTS[p.mount].name} mit, sauber und für den Bereich ${fromTo(p.from_m, p.to_m, u)}${p.from_start ? "; hab ihn schon auf dem Objektiv, wenn du zu filmen anfängst" : ""}.`,
    why: worth(p, u),
  }),
  neutral_density: (p) => ({
    text: p.stays
      ? `Bring ${neutral(p.density)}${onMount(p.mount)} an; er bleibt den ganzen Tauchgang drauf.`
      : `Nimm ${neutral(p.density)}${onMount(p.mount)} mit; zu Beginn ist er vor dem Objektiv.`,
    why: `Wo es am hellsten ist, lassen diese Einstellungen ${stops(p.stops)} zu viel Licht herein.`,
  }),
  filter_in: (p) => ({
    text: `${capital(MOUNTS[p.mount].on)}, stell ${setting(p)} ein und mach einen neuen Weißabgleich.`,
    why: "Ab hier verbessert der Filter die Farben.",
  }),
  filter_out: (p) => ({
    text: `${capital(MOUNTS[p.mount].off)}, stell ${setting(p)} ein und mach einen neuen Weißabgleich.`,
    why: "Ab hier verbessert der Filter die Farben nicht mehr.",
  }),
  neutral_off: (p) => ({
    text: `Nimm den ND-Filter ab und stell ${setting(p)} ein.`,
    why: "Ohne ihn ist es jetzt nicht mehr zu hell.",
  }),
  neutral_on: (p) => ({
    text: `Setz den ND-Filter wieder auf und stell ${setting(p)} ein.`,
    why: "Ohne ihn ist es ab hier zu hell.",
  }),
};

const MOUNTS: Readonly<Record<Mount, { on: string; off: string; name: string }>> = {
  flip: { on: "klapp den Filter ein", off: "klapp den Filter weg", name: "im Klapphalter" },
  clip_on: { on: "steck den Filter auf", off: "nimm den Filter ab", name: "im Clip-Halter" },
};

const onMount = (mount: FilterChange): string => (mount === "none" ? "" : ` ${MOUNTS[mount].name}`);
