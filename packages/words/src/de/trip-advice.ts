import type { FilterHolder, TripAdviceReasons, TripPlanCodes } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import type { TripSayings } from "../trip-texts.js";
import { filterName } from "./filter-name.js";
import { capital, depth, howOften, shown, spoken, stops } from "./format.js";
import { summary } from "./summary.js";

/** Warum ein gemeinsames Regal so verteilt wird. */
export const tripAdviceReasons: Texts<TripAdviceReasons, string> = {
  trip_handed_out: (p) =>
    `${p.pieces} Filter für ${p.guests === 1 ? "einen Gast" : `${p.guests} Gäste`}: Bei jedem Tauchgang bekommt zuerst so viel wie möglich, wer sonst am schlechtesten dran wäre, dann der Nächste und so weiter. Bei Gleichstand entscheiden die ids der Gäste. Ein Filter zählt, wenn er an die Kamera passt und genug bringt, um ihn anzubringen.`,
  trip_shelf_short: (p) =>
    `${capital(howOften(p.times))} taucht ein Gast ohne einen Filter, der ihm helfen würde, weil keiner mehr da ist.`,
  trip_nothing_fits: (p) =>
    `Mit den Ringen, die da sind, passt kein Filter des Regals an die ${p.guests.length === 1 ? "Kamera" : "Kameras"} von ${spoken(p.guests)}. Wenn ein Ring hilft, nennt ihn \`rings_to_get\`.`,
  trip_with_care: (p) =>
    `An ${p.guests.length === 1 ? "der Kamera" : "den Kameras"} von ${spoken(p.guests)} passt ein Filter, aber nicht ohne Weiteres: \`filter-mounting\` sagt, worauf zu achten ist.`,
  trip_fit_not_asked: (p) =>
    `Bei ${p.guests === 1 ? "einer Kamera" : `${p.guests} Kameras`} fehlen \`port_kind\` und \`lens_kind\`: Angenommen ist, dass jeder Filter passt.`,
  trip_thread_assumed: (p) =>
    `Für ${spoken(p.pieces)} ist kein Gewinde angegeben: Angenommen ist das Gewinde von Objektiv oder Port. Mit \`filter_thread_mm\` weißt du, was passt.`,
  trip_sun_assumed: (p) =>
    `${spoken(p.dives)}: Weder Ort noch Sonnenhöhe sind angegeben. Angenommen ist, dass die Sonne ${shown(p.elevation_deg)} Grad hoch steht.`,
  trip_no_daylight: (p) =>
    `${spoken(p.dives)}: Es gibt kein Tageslicht, also wird kein Filter verteilt. Frag \`dive-advice\` mit deinen Videolampen.`,
  trip_stays_on: () =>
    "Angenommen ist, dass Filter den ganzen Tauchgang montiert bleiben. Farbfehler sind das Mittel über beide Enden und die Mitte der Tiefen. Wenn du in der Tiefe wechseln kannst, frag `dive-advice` zu diesem Tauchgang.",
  trip_spread_shared: (p) =>
    `Wie sicher die Farbfehler ${p.with_filter ? "mit Filter" : "ohne Filter"} sind, ist für ${p.guest} bei ${p.dive} gerechnet, wo der größte bleibt, und für die anderen übernommen.`,
};

const HELD: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "auf das Objektiv geschraubt",
  screw_on_port: "auf den Port geschraubt",
  flip: "im Klapphalter am Port",
  clip_on: "auf den Port geclipst",
  rear_sheet: "als Folie hinter dem Objektiv",
  action_camera: "im Rahmen vor dem Fenster der Kamera",
};

const withRings = (rings: readonly string[]): string =>
  rings.length === 0 ? "" : ` mit ${rings.length === 1 ? "Step-Ring" : "den Step-Ringen"} ${spoken(rings)}`;

/** Der Plan eines Gastes für einen Tauchgang, in wenigen Sätzen. */
export const tripPlan: Texts<TripPlanCodes, string> = {
  ...summary,
  trip_mount: (p) =>
    `Bring ${filterName(p.filter, "wen")}${p.from === "shelf" ? " aus dem Regal" : ""} an${p.holder === undefined ? "" : `, ${HELD[p.holder]}`}${withRings(p.rings)}.`,
  trip_too_bright: (p, u) =>
    `In ${depth(p.depth_m, u)} ist es noch um ${stops(p.excess_stops)} zu hell: Belichte kürzer oder nimm einen ND-Filter.`,
  trip_without_daylight: () => "Es gibt kein Tageslicht: Lass Farbfilter weg und filme mit Videolampen.",
};

/** Was auf Kisten und in Kalendern steht. */
export const tripSays: Texts<TripSayings, string> = {
  trip_crate: ({ guest, pieces }) =>
    pieces.length === 0
      ? `${guest}: keine Filter.`
      : `${guest}: ${pieces.map((p) => `${p.piece}${withRings(p.rings)} für ${spoken(p.dives)}`).join("; ")}.`,
  trip_event: ({ dive, piece }) => `${dive}: ${piece ?? "kein Filter"}`,
  trip_uses: ({ guest, piece, rings }) => `${guest}: ${piece ?? "kein Filter"}${withRings(rings)}`,
};
