import type { GradeTexts } from "../grade-texts.js";
import { filterName } from "./filter-name.js";
import { between, depth, percent, shown, strength } from "./format.js";

const curves = {
  rec709: "ITU-R BT.709",
  hlg: `HLG de ITU-R BT.2100, blanco al ${percent(75)}`,
  log: "una curva logarítmica de 13 pasos",
  linear: "una grabación lineal",
};

export const grade: GradeTexts = {
  name: ({ depth_m, filter }, u) =>
    `Corrección inicial para ${depth(depth_m, u)}, ${filter.kind === "none" ? "sin filtro" : `con ${filterName(filter)}`}`,
  does: ({ finish, without_delta_e00, delta_e00 }) =>
    `${finish === "matched" ? "Igualada con una carta" : "Nivel de negro, exposición, balance y saturación"}: lleva el error de color de ${shown(without_delta_e00)} (${strength(without_delta_e00)}) a ${shown(delta_e00)} (${strength(delta_e00)}). Es un punto de partida: siga a ojo.`,
  holds: ({ min_depth_m, max_depth_m }, u) =>
    `Vale para tomas ${between(min_depth_m, max_depth_m, u)}, con el mismo filtro, si lo había, y con la exposición y el balance de blancos de esa profundidad.`,
  red: {
    excellent: "Aquí el rojo se registra bien. El rojo que no se registró sigue perdido.",
    acceptable: "Aquí el rojo se registra con algo de ruido. El rojo que no se registró sigue perdido.",
    poor: "Aquí se registra poco rojo: esta corrección sube también su ruido. El rojo que no se registró sigue perdido.",
    gone: "Aquí no se registra rojo. Sigue perdido: ninguna corrección lo recupera.",
  },
  input: ({ finish, curve }) =>
    `${finish === "matched" ? "Canales de la cámara tras su balance de blancos, sin su propia matriz de color" : "La imagen propia de la cámara, primarios de ITU-R BT.709"}; valores de código de 0 a 1, rango completo, de ${typeof curve === "string" ? curves[curve] : "la curva enviada"}.`,
  output:
    "sRGB de IEC 61966-2-1, valores de código de 0 a 1; lo que queda fuera es un color que una pantalla no puede mostrar.",
  linear:
    "Luz lineal, primarios de ITU-R BT.709, de 0 a 1: decodifique antes la grabación y codifique después para la pantalla.",
  convert: "Puede que su editor la necesite convertida.",
};
