import type { FilterHolder } from "@sunfathom/planner";

/** What holds a filter, in the middle of a sentence. */
export const mountingHolders: Readonly<Record<FilterHolder, string>> = {
  screw_on_lens: "a filter screwed onto the lens",
  screw_on_port: "a filter screwed onto the port",
  flip: "a flip holder on the port",
  clip_on: "a clip-on filter",
  rear_sheet: "a sheet behind the lens",
  action_camera: "a frame over the camera's window",
};
