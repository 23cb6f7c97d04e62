import type { ColourStripTexts } from "../picture-texts.js";
import { theFilter } from "./filter-name.js";
import { depth, depthNumber, shown, strength } from "./format.js";

export const colourStrip: ColourStripTexts = {
  headline: ({ max_depth_m }, u) => `Cómo se apagan los colores al bajar hasta ${depth(max_depth_m, u)}`,
  names: { grey: "gris", red: "rojo", skin: "piel" },
  reading:
    "Cada franja va de la superficie a la profundidad máxima a la que filma: gris, rojo y piel tal como los registra la cámara, con la exposición ajustada en cada profundidad. El borde de arriba los muestra a la luz del día.",
  daylight: "Ajuste de luz de día",
  balanced: "Balance de blancos hecho",
  filtered: ({ filter, is_advised }) =>
    `Balance de blancos hecho, con ${theFilter(filter)}${is_advised ? "" : ", aquí no aconsejado"}`,
  truth: "real",
  at_depth: ({ depth_m }, u) => depth(depth_m, u),
  off: ({ delta_e00 }) => `Error ${strength(delta_e00)}, ${shown(delta_e00)}`,
  dive: ({ min_depth_m, max_depth_m }, u) =>
    depthNumber(min_depth_m, u) === depthNumber(max_depth_m, u)
      ? `Usted filma a ${depth(max_depth_m, u)}`
      : `Usted filma de ${depthNumber(min_depth_m, u)} a ${depth(max_depth_m, u)}`,
  screen:
    "Los errores son el CIEDE2000 medio de los tres colores a la mayor profundidad, sin ruido; tomamos alrededor de 1 como lo mínimo que se ve. Los colores que una pantalla no puede mostrar se recortan a lo que puede.",
  description: ({ max_depth_m, filter, daylight, balanced, filtered }, u) =>
    [
      `Tres franjas de gris, rojo y piel desde la superficie hasta ${depth(max_depth_m, u)}, tal como las registra una cámara.`,
      `A ${depth(max_depth_m, u)}, el error de color es ${shown(daylight.delta_e00)} con el ajuste de luz de día, ${shown(balanced.delta_e00)} con el balance de blancos hecho y ${shown(filtered.delta_e00)} si además se usa ${theFilter(filter)}.`,
    ].join(" "),
};
