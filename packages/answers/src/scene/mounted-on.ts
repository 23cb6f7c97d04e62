import {
  mountedOnForm,
  mountedOnProperties,
  mountedOnRules,
  mountingDefaults,
  type Scene as WireScene,
} from "@sunfathom/contract";
import { assumedOfMount } from "./assumed-of-mount.js";
import type { Further } from "./canonical.js";
import type { FurtherScene } from "./light-scene.js";
import type { Assume } from "./one-form.js";

// Which aperture is looked at, and whether the filter is changed at depth, a scene of light says for itself.
const { f_number: _aperture, filter_change_underwater: unchanged, ...defaults } = mountingDefaults;

/** Fields that a default fills in where a scene says anything of what a filter is mounted on. */
const own: Further["own"] = {
  ...Object.fromEntries(
    // That no rings are on hand is no assumption.
    Object.entries({ ...defaults, rings: [] }).map(([name, fallback]) => [
      name,
      (wire: WireScene, assume: Assume): object => {
        if (wire.port_kind === undefined) return {};
        const given: unknown = wire[name as keyof WireScene];
        return { [name]: given === undefined && name === "rings" ? [] : assume(given, fallback, name) };
      },
    ]),
  ),
  // A holder that lets the filter be changed at depth is there for that.
  filter_change_underwater: ({ filter_change_underwater, holder }, assume) => ({
    filter_change_underwater: assume(
      filter_change_underwater,
      holder === "flip" || holder === "clip_on" ? holder : unchanged,
      "filter_change_underwater",
    ),
  }),
};

/** What scenes of light say of what a filter is mounted on: by it a service takes them, and a page that a scene asks for it. */
export const mountedOn: FurtherScene = {
  properties: mountedOnProperties,
  rules: mountedOnRules,
  form: mountedOnForm,
  defaults: {},
  own,
  assumed: (scene) => (scene.port_kind === undefined ? [] : assumedOfMount(scene)),
};
