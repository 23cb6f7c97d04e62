import { modelsAnswerForm as form, type ModelInfo } from "@sunfathom/contract";
import { models as read } from "@sunfathom/planner";
import { BUILD } from "../../generated/build.js";
import { type AboutData, reading } from "../reading.js";

export const models = reading({
  name: "models",
  form,
  read: () => ({ models: read() satisfies ModelInfo[], build: BUILD }),
});

export const about: AboutData = {
  summary: "The parts of the model",
  description:
    "Every table, formula and assumption behind the answers, with its source, domain and weaknesses.",
};
