import type { ModelInfo } from "../result/reference.js";
import { cameraModels } from "./camera-models.js";
import { lightModels } from "./light-models.js";

/** Every table, formula and assumption behind the answers, with its source, where it holds and what is known to be weak. */
export const models = (): ModelInfo[] => [...lightModels, ...cameraModels];
