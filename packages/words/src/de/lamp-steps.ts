import type { LampStepCodes } from "@sunfathom/planner";
import type { StepText } from "../answer-texts.js";
import type { Texts } from "../problems/texts.js";
import { textOf } from "../text-of.js";
import { filterName, takeOff } from "./filter-name.js";
import {
  brightness,
  capital,
  castOf,
  depth,
  distance,
  errorFall,
  fromTo,
  stops,
  strength,
  tooRed,
  wholeStops,
} from "./format.js";
import { waysOut } from "./ways-out.js";

/** Was mit den Videolampen geschieht, und warum. */
export const lampSteps: Texts<LampStepCodes, StepText> = {
  filter_lamps: (p) => ({
    text: `${takeOff(p)}Setz ${filterName(p.filter, "wen")} auf jede Videolampe.`,
    why: `Er gleicht ihr Licht in der Tiefe ans Tageslicht an und hinterlässt ${castOf(p.left)}.`,
  }),
  keep_lamp_filters: (p) => ({
    text: `Lass ${filterName(p.filter, "den")} auf den Videolampen.`,
    why: `Damit zeigt ihr Licht gegenüber dem Tageslicht ${castOf(p.left)}.`,
  }),
  bare_lamps: (p) => ({
    text: `Nimm ${filterName(p.filter, "den")} von den Videolampen.`,
    why: `Hier führen die Lampen: Es gibt kein Tageslicht, zu dem sie passen müssten, und der Filter kostet Licht.`,
  }),
  lamps_off: (p, u) => ({
    text: `Lass die Videolampen ausgeschaltet.${p.fitted ? ` Im Moment sitzt ${filterName(p.fitted, "wer")} davor.` : ""}${p.other ? ` Willst du sie trotzdem einschalten: ${textOf(waysOut, p.other.way, u)}` : ""}`,
    why: `Tageslicht gibt dem ganzen Bild Farbe, die Videolampen nur dem, was sie erreichen, und ein Weißabgleich passt nicht zu beiden: Im Tageslicht gemacht, hinterlässt er ${castOf(p.split)}${tooRed(p.red_excess)} auf allem, was sie erreichen. Das Motiv hat ${stops(p.cost)} weniger Licht.${p.other ? ` Auf diesem Weg eingeschaltet, hinterlassen sie ${castOf(p.other.left)}.` : ""}`,
  }),
  lamps_for_subject: (p) => ({
    text: "Für einen Tauchgang nur mit Nahaufnahmen, bei denen allein zählt, was die Lampen beleuchten: kein Filter, Videolampen an, Weißabgleich auf die Karte in ihrem Licht.",
    why: `Dann bleibt am Motiv ein ${strength(p.error)}er Farbfehler, ringsum ein ${strength(p.around)}er.`,
  }),
  lamps_from: (p, u) => ({
    text: `Ab ${depth(p.depth_m, u)} kannst du sie einschalten: Mach dann einen neuen Weißabgleich auf eine Karte in ihrem Licht.`,
    why: "Dort sind deine Videolampen auf dem Motiv heller als das Tageslicht.",
  }),
  lamps_on: (p, u) => ({
    text: `Schalte die Videolampen ein, ${distance(p.distance_m, u)} von der Stelle, an der das Motiv sein wird.${p.wide ? " Halte sie weit weg vom Objektiv, damit Schwebteilchen davor dunkel bleiben." : ""}`,
    why: "Belichtung und Weißabgleich werden in ihrem Licht eingestellt.",
  }),
  lamps_lead: (p) => ({
    text: `Halte das Motiv im Licht der Videolampen.${wide(p)}`,
    why: `Auf dem Motiv sind sie um ${wholeStops(p.green)} heller als das Tageslicht.`,
  }),
  lamps_hardly_show: (p, u) => ({
    text: `${p.haze ? "Schalte die Videolampen aus: Sie würden kaum mehr als Backscatter zeigen." : "Du kannst die Videolampen anlassen."}${p.fight ? ` ${capital(fromTo(p.fight.from_m, p.fight.to_m, u))} beißen sie sich mit dem Tageslicht: Verwende dort nur eines von beiden.` : ""}`,
    why: `Das Tageslicht ist um ${wholeStops(-p.green)} heller als die Videolampen: Ihr Licht fällt kaum auf.`,
  }),
  lamps_with_daylight: (p) => ({
    text: `Lass die Videolampen an, so weit vom Motiv weg wie beim Weißabgleich; mach ihn neu, wenn sich das ändert: Näher an ihnen wird alles röter.${p.unused ? ` ${capital(filterName(p.unused, "wer"))} bleibt ab.` : ""}${wide(p)}`,
    why: `Die Mischung beider Lichter ${errorFall(p.without_e, p.with_e)}, im ganzen Bild und gegenüber ausgeschalteten Videolampen. Was sie nicht erreichen, zeigt ${castOf(p.unlit)} in der Farbe des Wassers.${p.unused ? " Mit Filtern ans Tageslicht angeglichen, brächten sie kein Rot." : ""}`,
  }),
  lamps_only: (p) => ({
    text: `Halte Licht und Motiv in dem Abstand, in dem du den Weißabgleich gemacht hast.${wide(p)}`,
    why: `Das Wasser dazwischen nimmt am meisten ${p.blue > p.red ? "Blau" : "Rot"} weg: In einem anderen Abstand passt dieser Weißabgleich nicht mehr.`,
  }),
  lamps_reach: (p, u) => ({
    text: p.daylight
      ? `Die Videolampen reichen etwa ${depth(p.dark_m, u)} weit. Was weiter weg ist, hat nur Tageslicht: Es wird ${wholeStops(p.daylight.stops)} dunkler, in der Farbe des Wassers.`
      : `Die Videolampen reichen etwa ${depth(p.dark_m, u)} weit: Was weiter weg ist, bleibt im Bild schwarz.`,
    why: "Ihr Licht verteilt sich mit dem Abstand, und das Wasser nimmt hin und zurück seinen Teil.",
  }),
  mixing_zone: (p, u) => ({
    text: `${capital(fromTo(p.from_m, p.to_m, u))} beißen sich Videolampen und Tageslicht: Verwende dort nur eines von beiden.`,
    why: "Kein Weißabgleich macht beide zugleich neutral.",
  }),
};

const wide = (p: { haze?: { percent: number } }): string =>
  p.haze
    ? ` Halte die Lampen weit weg vom Objektiv und richte sie nach außen: Der Backscatter wäre sonst etwa ${brightness(p.haze.percent)} so hell wie ein graues Motiv.`
    : "";
