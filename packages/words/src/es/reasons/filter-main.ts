import type { FilterMainReasons } from "@sunfathom/planner";
import type { Texts } from "../../problems/texts.js";
import { choiceOf, filterName, kindName } from "../filter-name.js";
import {
  between,
  capital,
  densityOf,
  depth,
  distance,
  errorFall,
  fromTo,
  kelvin,
  percent,
  shareOf,
  strength,
} from "../format.js";

/** Lo que decide la elección de un filtro. */
export const filterMainReasons: Texts<FilterMainReasons, string> = {
  filter_earns: (p, u) =>
    `${capital(between(p.min_m, p.max_m, u))}, ${filterName(p.filter)} ${errorFall(p.without_e, p.with_e)}.`,
  no_filter_earns: (p) =>
    p.best_change < 0
      ? `Ningún filtro mejora los colores lo suficiente. El mejor de ellos, ${filterName(p.best)}, ayudaría demasiado poco para montarlo.`
      : `Ningún filtro mejora los colores. Incluso el mejor de ellos, ${filterName(p.best)}, los empeoraría.`,
  no_filter_owned: () =>
    "En la lista de su equipo no figura ningún filtro para el objetivo, así que no se aconseja ninguno. Omita `kit` para saber cuál serviría.",
  subject_out_of_sight: (p, u) =>
    `La turbidez tapa el motivo: está a ${distance(p.distance_m, u)}, y aquí se ve hasta unos ${distance(p.visibility_m, u)}. Un filtro solo cambiaría el color de la turbidez. Acérquese primero.`,
  change_at_depth: (p, u) =>
    `El filtro mejora los colores ${fromTo(p.from_m, p.to_m, u)}. Póngalo al entrar en ese tramo, quítelo al salir de él y repita cada vez el balance de blancos.`,
  serves_part_of_range: (p, u) =>
    `Mejora los colores ${fromTo(p.from_m, p.to_m, u)} y los empeora fuera de ahí. No lo puede cambiar bajo el agua, y aun así compensa en el conjunto del recorrido.`,
  part_would_gain: (p, u) =>
    `En el conjunto del recorrido no compensa ningún filtro, pero ${between(p.from_m, p.to_m, u)} compensaría ${p.kind === "none" ? "ninguno" : `un ${kindName(p.kind)}`}. Si solo filma ahí, pregunte por ese tramo.`,
  only_lamps_would_help: (p) =>
    `Con cualquier filtro queda un error de color ${strength(p.error)}: los colores que faltan son aquí demasiado débiles. Lleve focos de vídeo y acérquelos al motivo, quédese a menos profundidad o acepte una imagen con los colores del agua.`,
  densities_as_good: (p) =>
    `Entre las densidades ${densityOf(p.from_density)} y ${densityOf(p.to_density)} no verá diferencia. La más baja es la que menos luz quita.`,
  no_red_to_gain: (p, u) =>
    `A partir de ${depth(p.depth_m, u)} apenas queda rojo: incluso con ${filterName(p.filter)}, menos del ${percent(1)} de la señal del canal rojo es luz roja. Ahí un filtro no aporta nada.`,
  filter_adds_no_red: (p, u) =>
    `Un filtro no añade luz roja. A ${depth(p.depth_m, u)}, de lo que la cámara graba como rojo, ${shareOf(p.with_share * 100)} es de verdad luz roja, y sin el filtro ${shareOf(p.without_share * 100)}: el resto es verde y azul.`,
  lamps_are_the_only_light: (p) =>
    `Sus focos de vídeo son la única luz: un filtro en el objetivo solo le quitaría luz. Haga el balance de blancos con una tarjeta iluminada por ellos${p.lamp ? `, unos ${kelvin(p.lamp.cct_K)} en el propio foco` : ""}.`,
  near_tie: (p) =>
    `Hay poca diferencia. ${capital(choiceOf(p.runner_up))} da casi el mismo resultado, y quizá sea la mejor opción.`,
};
