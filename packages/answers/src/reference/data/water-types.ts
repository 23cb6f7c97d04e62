import { waterTypesAnswerForm as form, type WaterTypeInfo } from "@sunfathom/contract";
import { waterTypes as read } from "@sunfathom/planner";
import { type AboutData, type Narrowed, reading } from "../reading.js";

export const waterTypes = reading({
  name: "water-types",
  form,
  read: () => ({ water_types: read() satisfies Narrowed<WaterTypeInfo>[] }),
});

export const about: AboutData = {
  summary: "The optical water types",
  description: "Every water type that a scene can name, with its attenuation and where it comes from.",
};
