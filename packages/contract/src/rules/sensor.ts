import { rising } from "./rising.js";
import { broken, type RuleOf } from "./rule.js";
import { type SensorProblem, sensorProblem } from "./sensor-problem.js";

const inOrder = rising("sensor_samples");

const usable: RuleOf<"sensor_samples_usable", SensorProblem> = {
  code: "sensor_samples_usable",
  violations: (scene) => {
    const { sensor_samples } = scene;
    if (sensor_samples === undefined || inOrder.violations(scene).length > 0) return [];
    const problem = sensorProblem(sensor_samples);
    return problem === undefined ? [] : [broken("/sensor_samples", problem)];
  },
};

export const sensorRules = [inOrder, usable] as const;
