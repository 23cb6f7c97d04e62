import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { notRising } from "./rule-parts.js";

type SensorRules = Pick<SceneRuleParameters, "sensor_samples_rising" | "sensor_samples_usable">;

const CHANNELS = { red: "Rotkanal", green: "Grünkanal", blue: "Blaukanal" };

export const sensorRules: Texts<SensorRules, FieldText> = {
  sensor_samples_rising: notRising("sensor_samples"),
  sensor_samples_usable: (p) => {
    if (p.case === "short")
      return text(
        `Die Kurven des Sensors reichen von ${p.from_nm} bis ${p.to_nm} nm. Ein Teil dessen, was eine Kamera sieht, fehlt.`,
        `Stützstellen von höchstens ${p.needed_from_nm} nm bis mindestens ${p.needed_to_nm} nm`,
      );
    if (p.case === "blind")
      return text(
        `Der ${CHANNELS[p.channel]} sieht nie mehr als ${p.peak} von dem, was der beste Kanal sieht.`,
        `ein höchster Wert von mindestens ${p.least}, in der Einheit der anderen Kanäle`,
      );
    if (p.case === "swapped")
      return text(
        `Im Mittel sieht der ${CHANNELS[p.first]} ${p.first_nm} nm und der ${CHANNELS[p.second]} ${p.second_nm} nm. Vermutlich sind zwei Kanäle vertauscht.`,
        "Blau mit den kürzesten Wellenlängen, dann Grün, dann Rot",
      );
    return text(
      "Die drei Kanäle sehen fast dasselbe Licht. Ihre Bilder haben keine Farben.",
      "drei Kurven, die sich unterscheiden",
    );
  },
};
