import { type FilterKindInfo, filterKindsAnswerForm as form } from "@sunfathom/contract";
import { filterKinds as read } from "@sunfathom/planner";
import { type AboutData, type Narrowed, reading } from "../reading.js";

export const filterKinds = reading({
  name: "filter-kinds",
  form,
  read: () => ({ filter_kinds: read() satisfies Narrowed<FilterKindInfo>[] }),
});

export const about: AboutData = {
  summary: "The kinds of filter",
  description: "Every kind of filter that a scene can name, with its spectral shape.",
};
