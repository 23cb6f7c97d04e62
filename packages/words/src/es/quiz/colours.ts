/** Colores de filtros, detrás de «filtro». */
import type { FilterColour } from "../../quiz/colours.js";

export type { FilterColour };

export const BY_COLOUR: Readonly<Record<FilterColour, string>> = {
  red: "rojo",
  magenta: "magenta",
  blue: "azul",
  green: "verde",
};
