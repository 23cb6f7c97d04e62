import { modelsAnswerForm as form, type ModelInfo } from "@sunfathom/contract";
import { models as read } from "@sunfathom/planner";
import { BUILD } from "../../generated/build.js";
import { reading } from "../reading.js";

export const models = reading({
  name: "models",
  path: "/v1/models",
  form,
  read: () => ({ models: read() satisfies ModelInfo[], build: BUILD }),
});
