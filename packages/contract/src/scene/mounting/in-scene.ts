import { mountedFilterFields, ringsField } from "./filter.js";
import { kindFields, lensFields } from "./lens.js";

// Which aperture is looked at, and whether the filter is changed at depth, a scene of light says for itself.
const { f_number: _aperture, ...lens } = lensFields;
const { filter_change_underwater: _change, ...filter } = mountedFilterFields;

/** Camera, port, filter and rings beside the light: what a plan mounts has to fit them. */
export const mountingInSceneFields = { ...kindFields, ...lens, ...filter, ...ringsField };
