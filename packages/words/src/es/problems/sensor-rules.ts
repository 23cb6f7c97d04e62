import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { notRising } from "./rule-parts.js";

type SensorRules = Pick<SceneRuleParameters, "sensor_samples_rising" | "sensor_samples_usable">;

const CHANNELS = { red: "rojo", green: "verde", blue: "azul" };

export const sensorRules: Texts<SensorRules, FieldText> = {
  sensor_samples_rising: notRising("sensor_samples"),
  sensor_samples_usable: (p) => {
    if (p.case === "short")
      return text(
        `Las curvas del sensor van de ${p.from_nm} a ${p.to_nm} nm y falta una parte de lo que ve una cámara.`,
        `muestras desde ${p.needed_from_nm} nm o menos hasta ${p.needed_to_nm} nm o más`,
      );
    if (p.case === "blind")
      return text(
        `El canal ${CHANNELS[p.channel]} nunca ve más de ${p.peak} de lo que ve el mejor canal.`,
        `un valor máximo de al menos ${p.least}, en la unidad de los demás canales`,
      );
    if (p.case === "swapped")
      return text(
        `De media, el canal ${CHANNELS[p.first]} ve ${p.first_nm} nm y el canal ${CHANNELS[p.second]} ${p.second_nm} nm: parece que dos canales están intercambiados.`,
        "el azul con las longitudes de onda más cortas, luego el verde y luego el rojo",
      );
    return text(
      "Los tres canales ven casi la misma luz y sus imágenes no tienen color.",
      "tres curvas que difieran",
    );
  },
};
