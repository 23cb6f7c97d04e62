import { waterTypesAnswerForm as form, type WaterTypeInfo } from "@sunfathom/contract";
import { waterTypes as read } from "@sunfathom/planner";
import { type Narrowed, reading } from "../reading.js";

export const waterTypes = reading({
  name: "water-types",
  path: "/v1/water-types",
  form,
  read: () => ({ water_types: read() satisfies Narrowed<WaterTypeInfo>[] }),
});
