import { type FilterKindInfo, filterKindsAnswerForm as form } from "@sunfathom/contract";
import { filterKinds as read } from "@sunfathom/planner";
import { type Narrowed, reading } from "../reading.js";

export const filterKinds = reading({
  name: "filter-kinds",
  path: "/v1/filter-kinds",
  form,
  read: () => ({ filter_kinds: read() satisfies Narrowed<FilterKindInfo>[] }),
});
