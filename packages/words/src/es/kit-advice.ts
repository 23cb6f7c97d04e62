import type { KitAdviceReasons } from "@sunfathom/planner";
import type { Texts } from "../problems/texts.js";
import { filterName } from "./filter-name.js";
import { shown } from "./format.js";

const onDives = (dives: number): string => (dives === 1 ? "en una inmersión" : `en ${dives} inmersiones`);
const allDives = (dives: number): string =>
  dives === 1 ? "la inmersión" : dives === 2 ? "ambas inmersiones" : `las ${dives} inmersiones`;
const limit = (delta_e00: number): string => shown(delta_e00, Number.isInteger(delta_e00) ? 0 : 2);
const more = (delta_e00: number): string => shown(delta_e00, 1);

/** Por qué un equipo es como es. */
export const kitAdviceReasons: Texts<KitAdviceReasons, string> = {
  kit_smallest: (p) =>
    `${p.pieces} de ${p.of_pieces} piezas ${p.pieces === 1 ? "basta" : "bastan"} para ${allDives(p.dives)}. Con menos no alcanza.`,
  kit_nothing_needed: (p) =>
    `Para ${allDives(p.dives)} no necesita ninguna pieza: ni con todas (${p.of_pieces}) vería diferencia.`,
  kit_greedy: (p) =>
    `Ningún conjunto de hasta ${p.most_tried} piezas basta. Estas ${p.pieces} de ${p.of_pieces} se reunieron pieza a pieza; quizá basten menos.`,
  kit_limit_judged: (p) =>
    `En cada inmersión, el error de color supera en menos de ${limit(p.limit_delta_e00)} al que habría con todas las piezas a mano. Alrededor de 1 es lo mínimo que se ve.`,
  kit_limit_given: (p) =>
    `En cada inmersión, el error de color supera en menos de ${limit(p.limit_delta_e00)} al que habría con todas las piezas a mano, como usted pidió.`,
  kit_loses_most: (p) =>
    `Donde más se pierde es en ${p.dive}: el error de color es ${more(p.delta_e00)} mayor que con todas las piezas a mano.`,
  kit_loses_nothing: () =>
    "Con este conjunto, cada inmersión queda tan bien como con todas las piezas a mano.",
  kit_dives_close: (p) =>
    `Va muy justo en ${p.dives.join(", ")}: con esta incertidumbre, quizá el conjunto no baste allí.`,
  kit_pieces_close: (p) =>
    `Va muy justo con ${p.pieces.join(", ")}: con esta incertidumbre, quizá el conjunto baste sin ${p.pieces.length === 1 ? "esa pieza" : "esas piezas"}.`,
  kit_one_light_at_a_time: (p) =>
    `De los ${p.lights} focos de vídeo, en cada inmersión se usa uno solo. Los focos que usa juntos son una sola pieza: indique cuántos son.`,
  kit_one_more: (p) =>
    `Si consigue un filtro más, ${filterName(p.filter)} es lo que más ayuda: hasta ${more(p.delta_e00)} menos de error de color, ${onDives(p.dives)}.`,
  kit_no_more_helps: (p) =>
    `Ningún otro filtro rojo o magenta quita ${limit(p.limit_delta_e00)} o más del error de color en ninguna inmersión.`,
  piece_buys: (p) => `Sin ella, el error de color es hasta ${more(p.delta_e00)} mayor ${onDives(p.dives)}.`,
  piece_lights: (p) => `Sin ella no tiene luz para filmar ${onDives(p.dives)}.`,
  piece_holds: (p) => `Sujeta ${p.filters.join(", ")} ${onDives(p.dives)}.`,
  piece_spared: (p) =>
    `Con todas las piezas a mano la usaría ${onDives(p.dives)}, y el error de color bajaría hasta en ${more(p.delta_e00)}. Eso está por debajo del límite.`,
  piece_never_used: () => "En cada inmersión, otra pieza, o ninguna, da igual de buen resultado.",
  piece_never_fits: () =>
    "No encaja en la cámara en ninguna de las inmersiones, con los anillos y soportes que hay.",
  piece_not_judged: () =>
    "Un filtro ND cambia la exposición y no los colores, así que aquí no se juzga. dive-advice dice dónde lo necesita.",
};
