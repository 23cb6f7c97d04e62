import type { SceneRuleParameters } from "@sunfathom/contract";
import { type FieldText, type Texts, fieldText as text } from "../../problems/texts.js";
import { notRising } from "./rule-parts.js";

type SensorRules = Pick<SceneRuleParameters, "sensor_samples_rising" | "sensor_samples_usable">;

export const sensorRules: Texts<SensorRules, FieldText> = {
  sensor_samples_rising: notRising("sensor_samples"),
  sensor_samples_usable: (p) => {
    if (p.case === "short")
      return text(
        `The curves of the sensor go from ${p.from_nm} to ${p.to_nm} nm, so part of what a camera sees is missing.`,
        `samples from ${p.needed_from_nm} nm or less to ${p.needed_to_nm} nm or more`,
      );
    if (p.case === "blind")
      return text(
        `The ${p.channel} channel never sees more than ${p.peak} of what the best channel sees.`,
        `a highest value of at least ${p.least}, in the unit that the other channels have`,
      );
    if (p.case === "swapped")
      return text(
        `On average the ${p.first} channel sees ${p.first_nm} nm and the ${p.second} channel ${p.second_nm} nm, so two of them seem to be swapped.`,
        "blue with the shortest wavelengths, then green, then red",
      );
    return text(
      "The three channels see almost the same light, so their pictures have no colours.",
      "three curves that differ",
    );
  },
};
