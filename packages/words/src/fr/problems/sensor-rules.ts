import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { notRising } from "./rule-parts.js";

type SensorRules = Pick<SceneRuleParameters, "sensor_samples_rising" | "sensor_samples_usable">;

const CHANNELS = { red: "canal rouge", green: "canal vert", blue: "canal bleu" };

export const sensorRules: Texts<SensorRules, FieldText> = {
  sensor_samples_rising: notRising("sensor_samples"),
  sensor_samples_usable: (p) => {
    if (p.case === "short")
      return text(
        `Les courbes du capteur vont de ${p.from_nm} à ${p.to_nm} nm : il manque une partie de ce que voit un appareil.`,
        `des points de ${p.needed_from_nm} nm ou moins à ${p.needed_to_nm} nm ou plus`,
      );
    if (p.case === "blind")
      return text(
        `Le ${CHANNELS[p.channel]} ne voit jamais plus de ${p.peak} de ce que voit le meilleur canal.`,
        `une valeur maximale d’au moins ${p.least}, dans l’unité des autres canaux`,
      );
    if (p.case === "swapped")
      return text(
        `En moyenne, le ${CHANNELS[p.first]} voit ${p.first_nm} nm et le ${CHANNELS[p.second]} ${p.second_nm} nm : deux canaux semblent inversés.`,
        "le bleu aux ondes les plus courtes, puis le vert, puis le rouge",
      );
    return text(
      "Les trois canaux voient presque la même lumière : leurs images n’ont pas de couleurs.",
      "trois courbes différentes",
    );
  },
};
