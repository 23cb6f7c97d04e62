import type { KitAdviceReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { shown } from "./format.js";

const onDives = (dives: number): string => (dives === 1 ? "bei einem Tauchgang" : `bei ${dives} Tauchgängen`);
const allDives = (dives: number): string =>
  dives === 1 ? "den Tauchgang" : dives === 2 ? "beide Tauchgänge" : `alle ${dives} Tauchgänge`;
const limit = (delta_e00: number): string => shown(delta_e00, Number.isInteger(delta_e00) ? 0 : 2);
const more = (delta_e00: number): string => shown(delta_e00, 1);

/** Warum eine Ausrüstung ist, wie sie ist. */
export const kitAdviceReasons: Texts<KitAdviceReasons, string> = {
  kit_smallest: (p) =>
    `${p.pieces} von ${p.of_pieces} Teilen ${p.pieces === 1 ? "reicht" : "reichen"} für ${allDives(p.dives)}. Mit weniger geht es nicht.`,
  kit_nothing_needed: (p) =>
    `Für ${allDives(p.dives)} brauchst du kein Teil: Auch mit allen ${p.of_pieces} sähest du keinen Unterschied.`,
  kit_greedy: (p) =>
    `Keine Auswahl von bis zu ${p.most_tried} Teilen reicht. Diese ${p.pieces} von ${p.of_pieces} sind Stück für Stück zusammengestellt; vielleicht reichen auch weniger.`,
  kit_limit_judged: (p) =>
    `Bei jedem Tauchgang ist der Farbfehler um weniger als ${limit(p.limit_delta_e00)} größer als mit allen Teilen zur Hand. Etwa 1 ist das Wenigste, was man sieht.`,
  kit_limit_given: (p) =>
    `Bei jedem Tauchgang ist der Farbfehler um weniger als ${limit(p.limit_delta_e00)} größer als mit allen Teilen zur Hand, wie von dir verlangt.`,
  kit_loses_most: (p) =>
    `${p.dive} verliert am meisten: Der Farbfehler ist um ${more(p.delta_e00)} größer als mit allen Teilen zur Hand.`,
  kit_loses_nothing: () => "Mit dieser Auswahl wird jeder Tauchgang so gut wie mit allen Teilen zur Hand.",
  kit_dives_close: (p) =>
    `Knapp ist es bei ${p.dives.join(", ")}: Bei allem, was unsicher ist, reicht die Auswahl dort vielleicht nicht.`,
  kit_pieces_close: (p) =>
    `Knapp ist es bei ${p.pieces.join(", ")}: Bei allem, was unsicher ist, reicht die Auswahl vielleicht auch ohne.`,
  kit_one_light_at_a_time: (p) =>
    `Von den ${p.lights} Videolampen wird bei einem Tauchgang jeweils eine benutzt. Videolampen, die du zusammen benutzt, sind ein Teil mit ihrer Anzahl.`,
  kit_one_more: (p) =>
    `Wenn du noch einen Filter besorgst, hilft ${filterName(p.filter, "wer")} am meisten: Der Farbfehler wird bis zu ${more(p.delta_e00)} kleiner, ${onDives(p.dives)}.`,
  kit_no_more_helps: (p) =>
    `Kein anderer Rot- oder Magentafilter nimmt bei irgendeinem Tauchgang ${limit(p.limit_delta_e00)} oder mehr vom Farbfehler weg.`,
  piece_buys: (p) =>
    `Ohne dieses Teil ist der Farbfehler ${onDives(p.dives)} bis zu ${more(p.delta_e00)} größer.`,
  piece_lights: (p) => `Ohne dieses Teil hast du ${onDives(p.dives)} kein Licht zum Filmen.`,
  piece_holds: (p) => `Es hält ${p.filters.join(", ")} ${onDives(p.dives)}.`,
  piece_spared: (p) =>
    `Mit allen Teilen zur Hand würdest du es ${onDives(p.dives)} benutzen, für einen bis zu ${more(p.delta_e00)} kleineren Farbfehler. Das liegt unter der Grenze.`,
  piece_never_used: () => "Bei jedem Tauchgang ist ein anderes Teil, oder keines, genauso gut.",
  piece_never_fits: () =>
    "Es passt bei keinem Tauchgang an die Kamera, mit den Ringen und Haltern, die es gibt.",
  piece_not_judged: () =>
    "Ein ND-Filter ändert die Belichtung und nicht die Farben; darum wird er hier nicht beurteilt. dive-advice sagt, wo du einen brauchst.",
};
