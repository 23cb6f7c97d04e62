import type { FilterMapTexts } from "../picture-texts.js";
import { filterName, kindName } from "./filter-name.js";
import { between, capital, densityOf, depth, depthNumber, shown } from "./format.js";

export const filterMap: FilterMapTexts = {
  headline: ({ filter, is_advised, min_depth_m, max_depth_m }, u) =>
    is_advised
      ? `${capital(between(min_depth_m, max_depth_m, u))}, lo mejor es ${filterName(filter)}`
      : `${capital(between(min_depth_m, max_depth_m, u))}, ningún filtro compensa`,
  reading:
    "Cada número es un error de color: cuánto se desvían los colores a esa profundidad, tras un filtro de esa densidad. Tomamos alrededor de 1 como lo mínimo que se ve. Cuanto más oscuro el campo, mayor el error.",
  across: ({ kind }) =>
    `Densidad del ${kind === "none" ? "filtro" : kindName(kind)} (0,3 cuesta cerca de un paso)`,
  none: "sin",
  at_density: ({ density }) => densityOf(density),
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  error: ({ delta_e00 }) => shown(delta_e00),
  band: ({ from, to }) =>
    from === to
      ? `En el marco: lo aconsejado, densidad ${densityOf(from)}`
      : `En el marco: lo aconsejado; entre las densidades ${densityOf(from)} y ${densityOf(to)} no verá diferencia`,
  no_band: "No hay densidad en un marco: aquí no se aconseja ninguna.",
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Usted filma a ${depth(max_depth_m, u)}`
      : `Usted filma de ${depthNumber(min_depth_m, u)} a ${depth(max_depth_m, u)}`,
  description: ({ kind, densities, depths_m, delta_e00, filter, is_advised, max_depth_m }, u) => {
    const deepest = delta_e00[depths_m.length - 1] ?? [];
    const least = Math.min(...deepest);
    return [
      `Errores de color tras un ${kind === "none" ? "filtro" : kindName(kind)} de densidad 0 a ${densityOf(densities[densities.length - 1] ?? 0)}, desde cerca de la superficie hasta ${depth(max_depth_m, u)}.`,
      `A ${depth(max_depth_m, u)} el error es ${shown(deepest[0] ?? 0)} sin filtro y ${shown(least)} en el mejor caso, con densidad ${densityOf(densities[deepest.indexOf(least)] ?? 0)}.`,
      is_advised
        ? `Para todas las profundidades a las que filma se aconseja ${filterName(filter)}.`
        : "No se aconseja ningún filtro.",
    ].join(" ");
  },
};
