import {
  apparentDistance,
  domeImageDistance,
  flatPortField_deg,
  flatPortMagnification,
  lateralColour_percent,
} from "@sunfathom/optics";
import type { PortFigures } from "../result/filter-mounting.js";
import type { FilterMountingScene } from "../scene/filter-mounting-scene.js";
import type { LensFacts } from "./lens.js";
import { type Reason, reason } from "./reason.js";

/** What the port makes of the picture; a camera that is watertight itself looks through a flat window too. */
export function portFigures(scene: FilterMountingScene, lens: LensFacts): PortFigures {
  const field_in_air_deg = 2 * lens.half_deg;
  if (scene.port_kind === "dome") {
    const radius = scene.dome_radius_mm;
    const field = { field_in_air_deg, field_in_water_deg: field_in_air_deg };
    if (radius === undefined) return field;
    const fromVertex = domeImageDistance(radius, Number.POSITIVE_INFINITY);
    return {
      ...field,
      virtual_infinity_from_vertex_mm: fromVertex,
      virtual_infinity_from_centre_mm: fromVertex + radius,
    };
  }
  const lateral = lateralColour_percent(lens.half_deg, lens.projection);
  return {
    field_in_air_deg,
    field_in_water_deg: flatPortField_deg(field_in_air_deg),
    magnification: flatPortMagnification(),
    apparent_distance_share: apparentDistance(1),
    ...(lateral === undefined ? {} : { lateral_colour_percent: lateral }),
  };
}

export function portReasons(port: PortFigures): Reason[] {
  const { field_in_air_deg, field_in_water_deg, magnification } = port;
  if (magnification !== undefined) {
    const enlarged_percent = 100 * (magnification - 1);
    return [
      reason("flat_port_narrows", "computed", { field_in_air_deg, field_in_water_deg, enlarged_percent }),
    ];
  }
  const from_vertex_mm = port.virtual_infinity_from_vertex_mm;
  const from_centre_mm = port.virtual_infinity_from_centre_mm;
  return [
    reason("dome_keeps_field", "computed"),
    ...(from_vertex_mm !== undefined && from_centre_mm !== undefined
      ? [reason("dome_brings_near", "computed", { from_vertex_mm, from_centre_mm })]
      : []),
  ];
}
