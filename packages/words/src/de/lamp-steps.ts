import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts, TextUnits } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { filterName, takeOff } from "./filter-name.js";
import { brightness, capital, castOf, depth, distance, fromTo, grouped, redder, stops } from "./format.js";
import { waysOut } from "./ways-out.js";

/** Was mit den Videolampen geschieht, und warum. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  check_lamps: (p, u) => ({ text: CHECK_LIGHTS, why: lightNeeded(p, u) }),
  filter_lamps: (p, u) => ({
    text: `${takeOff(p)}Setz ${filterName(p.filter, "wen")} auf jede Videolampe.${checked(p)}`,
    why: `Er gleicht ihr Licht in der Tiefe ans Tageslicht an und hinterlässt ${castOf(p.left)}.${needed(p, u)}`,
  }),
  keep_lamp_filters: (p, u) => ({
    text: `Lass ${filterName(p.filter, "wen")} auf den Videolampen.${checked(p)}`,
    why: `Damit zeigt ihr Licht gegenüber dem Tageslicht ${castOf(p.left)}.${needed(p, u)}`,
  }),
  bare_lamps: (p, u) => ({
    text: `Nimm ${filterName(p.filter, "wen")} von den Videolampen.${checked(p)}`,
    why: `Hier führen die Lampen: Es gibt kein Tageslicht, zu dem sie passen müssten, und der Filter kostet Licht.${needed(p, u)}`,
  }),
  lamps_off: (p, u) => ({
    text: `Lass die Videolampen ausgeschaltet am Rig.${p.fitted ? ` Im Moment sitzt ${filterName(p.fitted, "wer")} davor.` : ""}${p.other ? ` Willst du sie trotzdem einschalten: ${textOf(waysOut, p.other.way, u)}` : ""}`,
    why: `Beim Weißabgleich im Tageslicht hätte alles, was sie erreichen, ${castOf(p.split)}, ${redder(p.red_excess)}. Ohne sie verliert das Motiv ${stops(p.cost)}.${p.other ? ` Der andere Weg hinterlässt ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_from: (p, u) => ({
    text: `Ab ${depth(p.depth_m, u)} kannst du sie einschalten: Mach dann einen neuen Weißabgleich auf eine Karte in ihrem Licht.`,
    why: "Dort sind deine Videolampen auf dem Motiv heller als das Tageslicht.",
  }),
  lamps_lead: (p) => ({
    text: `Schalte die Videolampen ein und halte das Motiv in ihrem Licht.${wide(p)}`,
    why: `Auf dem Motiv sind sie im Grün um ${stops(p.green)} heller als das Tageslicht.`,
  }),
  lamps_hardly_show: (p) => ({
    text: p.haze
      ? "Schalte die Videolampen aus: Sie würden kaum mehr als Backscatter zeigen."
      : "Du kannst die Videolampen anlassen.",
    why: `Das Tageslicht ist im Grün um ${stops(-p.green)} heller als die Videolampen: Ihr Licht fällt kaum auf.`,
  }),
  lamps_only: (p) => ({
    text: `Halte Licht und Motiv in dem Abstand, in dem du den Weißabgleich gemacht hast.${wide(p)}`,
    why: `Das Wasser dazwischen kostet im Rot ${stops(p.red)}, im Grün ${stops(p.green)} und im Blau ${stops(p.blue)}.`,
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))} beißen sich Videolampen und Tageslicht: Verwende dort nur eines von beiden.`,
    why: "Kein Weißabgleich macht beide zugleich neutral.",
  }),
};

const CHECK_LIGHTS = "Lade und prüfe die Videolampen; probier sie im Wasser aus, nicht an der Luft.";
const lightNeeded = (p: { lux: number; distance_m: number }, u?: TextUnits): string =>
  `Du brauchst etwa ${grouped(Number(p.lux.toPrecision(2)))} lx auf dem Motiv in ${distance(p.distance_m, u)} Abstand.`;
/** Dasselbe neben anderem, was mit ihnen geschieht. */
const checked = ({ check }: { check?: object }): string => (check ? ` ${CHECK_LIGHTS}` : "");
const needed = ({ check }: { check?: { lux: number; distance_m: number } }, u?: TextUnits): string =>
  check ? ` ${lightNeeded(check, u)}` : "";

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Halte die Lampen weit weg vom Objektiv und richte sie nach außen, sodass nur der Rand des Lichtkegels das Motiv trifft: Der Backscatter wäre etwa ${brightness(p.haze.percent)} so hell wie ein graues Motiv.`
    : "";
