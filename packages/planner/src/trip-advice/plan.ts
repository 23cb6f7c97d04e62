import type { FilterMountingScene, StepRing } from "../scene/filter-mounting-scene.js";
import type { Bottom, Camera, Cover, Daylight, Dive, KitItem, View, WaterBasis } from "../scene/scene.js";

/** A filter as a piece that is handed over, with what it screws into or is held by. */
export interface Piece extends KitItem, PieceMount {}

/** What belongs to a piece, and not to a camera. Without a holder it is a round filter, for a thread. */
export type PieceMount = Pick<
  FilterMountingScene,
  | "holder"
  | "holder_inner_diameter_mm"
  | "filter_thread_mm"
  | "filter_clear_diameter_mm"
  | "filter_thickness_mm"
  | "filter_material"
  | "sheet_thickness_mm"
  | "sheet_refractive_index"
>;

/** What a filter is mounted on. */
export type CameraMount = Omit<
  FilterMountingScene,
  keyof PieceMount | "rings" | "f_number" | "filter_change_underwater"
>;

/** Where and when is filmed. */
export interface TripDive {
  id: string;
  /** By the clocks of the site, and their zone. */
  local_time: string;
  time_zone: string;
  scene: WaterBasis & Daylight & Cover & Dive & View & Bottom;
  /** The height of the sun was left out, and so was the place. */
  isSunAssumed: boolean;
}

export interface TripGuest {
  id: string;
  camera: Camera;
  /** Absent where nothing is known of port and lens. */
  mount?: CameraMount;
  rings: readonly StepRing[];
  kit: readonly Piece[];
}

/** The dives of a trip, who comes along, and what there is to share. */
export interface TripPlan {
  dives: readonly TripDive[];
  guests: readonly TripGuest[];
  shelf: readonly (Piece & { quantity: number })[];
  rings: readonly (StepRing & { quantity: number })[];
}
