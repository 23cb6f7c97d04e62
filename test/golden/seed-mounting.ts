/** Cameras, ports and filters as callers send them, from a seed. */
import { filterHolders } from "../../packages/contract/src/scene/values.js";
import { Seeded } from "./seeded.js";

type Part = Record<string, unknown>;

const THREADS = [46, 52, 58, 67, 72, 77, 82] as const;
const PORTS = ["dome", "flat", "none"] as const;

/** @param index 0, 1, 2, ...: the place in the series */
export function seededMounting(index: number): Part {
  const seeded = new Seeded(5000 + index);
  const port = PORTS[index % PORTS.length];
  return {
    port_kind: port,
    ...(port === "dome" && seeded.chance(0.85) ? { dome_radius_mm: seeded.of([50, 85, 110, 115]) } : {}),
    ...lens(seeded),
    ...(seeded.chance(0.6) ? { f_number: seeded.of([2, 2.8, 5.6, 11]) } : {}),
    ...(seeded.chance(0.4) || port === "none"
      ? { lens_interchangeable: port !== "none" && seeded.chance(0.5) }
      : {}),
    ...(port === "flat" && seeded.chance(0.6) ? { port_thread_mm: seeded.of(THREADS) } : {}),
    ...(seeded.chance(0.3) ? { entrance_pupil_distance_mm: seeded.between(8, 60) } : {}),
    ...(seeded.chance(0.35) ? { holder: seeded.of(filterHolders) } : {}),
    ...(seeded.chance(0.6) ? { filter_thread_mm: seeded.of(THREADS) } : {}),
    ...(seeded.chance(0.25) ? { filter_clear_diameter_mm: seeded.between(30, 80) } : {}),
    ...(seeded.chance(0.4) ? { filter_thickness_mm: seeded.of([2, 3, 7, 12]) } : {}),
    ...(seeded.chance(0.4) ? { filter_change_underwater: seeded.of(["flip", "clip_on"]) } : {}),
    ...(seeded.chance(0.4) ? { rear_opening_width_mm: 30, rear_opening_height_mm: seeded.of([20, 24]) } : {}),
    ...(seeded.chance(0.3) ? { rear_fixing: "tape" } : {}),
    ...(seeded.chance(0.3)
      ? {
          sheet_thickness_mm: seeded.of([0.05, 0.18, 0.5, 1.5]),
          sheet_refractive_index: seeded.of([1.4, 1.6]),
        }
      : {}),
    ...(seeded.chance(0.5) ? { rings: rings(seeded) } : {}),
  };
}

function lens(seeded: Seeded): Part {
  const thread = seeded.chance(0.7) ? { lens_thread_mm: seeded.of(THREADS) } : {};
  const kind = seeded.of(["wide", "standard", "fisheye"] as const);
  if (kind === "fisheye") {
    return {
      lens_kind: kind,
      field_of_view_deg: seeded.of([120, 140, 160, 180, 200]),
      ...(seeded.chance(0.3) ? thread : {}),
    };
  }
  const sensor_diagonal_mm = seeded.of([7.7, 21.6, 28.4, 43.3]);
  const crop = sensor_diagonal_mm / 43.3;
  const focal = kind === "wide" ? seeded.between(10, 24) : seeded.between(28, 60);
  return {
    lens_kind: kind,
    focal_length_mm: Number((focal * crop).toPrecision(3)),
    sensor_diagonal_mm,
    ...thread,
  };
}

function rings(seeded: Seeded): Part[] {
  const count = Math.floor(seeded.between(1, 4.99));
  return Array.from({ length: count }, (_, index) => ({
    id: `ring-${index + 1}`,
    from_mm: seeded.of(THREADS),
    to_mm: seeded.of(THREADS),
    thickness_mm: seeded.of([2, 2.5, 4]),
  }));
}
