import type { ClipReasons, MomentReasons, TimelineReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { CueLines } from "../trip-texts.js";
import { settings } from "./dial.js";
import { aCast, between, castOf, depth, depths, percent, shown, stops } from "./format.js";

const minutes = (seconds: number): string => {
  if (seconds < 90) return `${shown(seconds)} ${Math.round(seconds) === 1 ? "Sekunde" : "Sekunden"}`;
  return `${shown(seconds / 60)} Minuten`;
};

/** Warum die Kamera in einem Augenblick eines Tauchgangs einzustellen war. */
export const momentReasons: Texts<MomentReasons, string> = {
  moment_first_balance: () => "Mach hier den Weißabgleich, bevor du filmst.",
  moment_balance_again: (p) =>
    `Mach hier einen Weißabgleich: Der letzte lässt ${castOf(p.shift_delta_e00)} stehen, den ein neuer herausnimmt.`,
  moment_balance_done: (p) =>
    p.shift_delta_e00 > p.tolerance_delta_e00
      ? `Dieser Weißabgleich war fällig: Er hat ${castOf(p.shift_delta_e00)} herausgenommen.`
      : "Dieser Weißabgleich war früh: Der letzte passte noch.",
  moment_balance_behind_change: () =>
    "Der Filter wurde gewechselt: Der Weißabgleich von vorher gilt jetzt nicht mehr.",
  moment_filter_on: (p, u) => `Auf ${depth(p.depth_m, u)} kommt der Filter aufs Objektiv.`,
  moment_filter_off: (p, u) => `Auf ${depth(p.depth_m, u)} kommt der Filter vom Objektiv herunter.`,
  moment_exposure: (p) =>
    `Stell die Belichtung neu ein: Es ist ${stops(Math.abs(p.stops))} ${p.stops > 0 ? "heller" : "dunkler"} als beim letzten Mal.`,
};

/** Wie es um den Weißabgleich eines Clips steht. */
export const clipReasons: Texts<ClipReasons, string> = {
  clip_balance_held: () =>
    "Der letzte Weißabgleich passt über den ganzen Clip: Ein neuer hätte wenig gebracht.",
  clip_balance_close: (p) =>
    `Ob der letzte Weißabgleich noch passt, kann niemand sagen: Seitdem ist ${aCast(p.shift_delta_e00)} entstanden, mit den Unsicherheiten von Wasser und Kamera vielleicht auch mehr oder weniger.`,
  clip_balance_lost: (p) =>
    p.after_s < 1
      ? `Der letzte Weißabgleich passt schon am Anfang des Clips nicht mehr: Ein neuer hätte ${castOf(p.shift_delta_e00)} herausgenommen. Korrigiere den Clip für sich.`
      : `Der letzte Weißabgleich passt nach ${minutes(p.after_s)} im Clip nicht mehr: Ein neuer hätte ${castOf(p.shift_delta_e00)} herausgenommen. Korrigiere diesen Teil für sich.`,
  clip_balance_not_set: () => "Vor diesem Clip wurde kein Weißabgleich gemacht.",
};

/** Worauf die Zeitleiste beruht. */
export const timelineReasons: Texts<TimelineReasons, string> = {
  timeline_as_planned: () =>
    "Du hast keine Ereignisse angegeben: Filter und Weißabgleich sind so angenommen, wie der Plan für diesen Tauchgang sie hat, zu den Zeiten, als du diese Tiefen durchtaucht hast.",
  timeline_as_done: (p) =>
    p.events === 0
      ? "Du hast angegeben, dass du weder Filter noch Weißabgleich angerührt hast: Danach sind die Clips beurteilt."
      : `Die Clips sind danach beurteilt, was du getan hast: ${shown(p.events)} ${p.events === 1 ? "Ereignis" : "Ereignisse"}.`,
  timeline_filmed: (p, u) =>
    p.clips === 0
      ? `Du hast keine Clips angegeben: Der Plan gilt ${between(p.min_depth_m, p.max_depth_m, u)}.`
      : `Der Plan gilt für die Tiefen deiner Clips, ${between(p.min_depth_m, p.max_depth_m, u)}.`,
  timeline_not_passed: (p, u) =>
    `Der Plan hat Schritte auf ${depths(p.depths_m, u)}, wohin der Tauchgang nicht zurückkam: Sie sind weggelassen.`,
  timeline_exposures_left_out: (p) =>
    `Das Licht hat so oft gewechselt, dass ${shown(p.moments)} neue ${p.moments === 1 ? "Belichtung weggelassen ist" : "Belichtungen weggelassen sind"}.`,
  timeline_drawn: (p) =>
    `Das Licht ist für feste Tiefen und Zeiten gerechnet und dazwischen geradlinig verbunden: Es stimmt auf ${shown(p.stops, 2)} Blendenstufen genau.`,
  timeline_spread_shared: () =>
    "Wie sicher die Werte sind, ist für die Mitte des Tauchgangs gerechnet und für den ganzen übernommen.",
};

/** Zeilen einer Einblendung. */
export const cueLines: Texts<CueLines, string> = {
  cue_title: () => "Das Licht dieses Tauchgangs, Clip für Clip",
  cue_depths: (p, u) => `Gefilmt ${between(p.min_depth_m, p.max_depth_m, u)}`,
  cue_light: (p) =>
    `EV ${shown(p.ev100.likely, 1)} bei ISO 100 (${shown(p.ev100.low, 1)} bis ${shown(p.ev100.high, 1)})`,
  cue_settings: (p) => `Einstellung: ${settings(p)}`,
  cue_red: (p) =>
    `Rot übrig: ${percent(p.percent.likely)} (${shown(p.percent.low)} bis ${percent(p.percent.high)})`,
};
