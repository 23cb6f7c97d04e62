import type { NonEmpty } from "../lists/non-empty.js";
import type { FilterHolder, StepRing } from "../scene/filter-mounting-scene.js";
import type { KitItem, Lamp, Scene } from "../scene/scene.js";

/** Holders that are a piece of their own; what screws on, or lies behind the lens, needs none. */
export type PieceHolder = Extract<FilterHolder, "flip" | "clip_on" | "action_camera">;

/** A filter for the lens. What it filters stands in the dive's kit, since its pictures are read by the camera of the dive. */
export interface LensFilterPiece {
  id: string;
  item: "lens_filter";
  /** Its own, in place of what the dive says of filters. */
  filter_thread_mm?: number;
  filter_clear_diameter_mm?: number;
  filter_thickness_mm?: number;
}

export interface LampFilterPiece {
  id: string;
  item: "lamp_filter";
}

/** Equal video lights that are carried together. */
export interface LampPiece {
  id: string;
  item: "lamp";
  lamp: Lamp;
}

export interface RingPiece extends StepRing {
  item: "ring";
}

export interface HolderPiece {
  id: string;
  item: "holder";
  holder: PieceHolder;
}

export type KitPiece = LensFilterPiece | LampFilterPiece | LampPiece | RingPiece | HolderPiece;

export interface KitDive {
  id: string;
  /** Without lights, and with nothing on the lens; `kit` has the filters among the pieces, in their order. */
  scene: Scene;
}

/** What a kit is sought for. */
export interface KitPlan {
  /** In the order of their ids, as are the pieces: what ties then goes by id, and the caller's order decides nothing. */
  dives: NonEmpty<KitDive>;
  pieces: NonEmpty<KitPiece>;
  /** What a dive may lose against the whole kit, CIEDE2000. */
  regret_limit_delta_e00: number;
  /** Whether the caller set that limit. */
  limit_is_own: boolean;
}

/** Filters of a dive's kit by the place of their piece. */
export const kitItemOf = ({ kit = [] }: Scene, id: string): KitItem | undefined =>
  kit.find((item) => item.id === id);
