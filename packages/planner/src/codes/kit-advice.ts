import type { NamedFilter } from "./named-filter.js";

/** Why a kit is as it is. */
export interface KitAdviceReasons {
  /** Of the set: the smallest one, of so many pieces. */
  kit_smallest: { pieces: number; of_pieces: number; dives: number };
  /** Nothing has to be taken along. */
  kit_nothing_needed: { of_pieces: number; dives: number };
  /** No set so small that all are tried will do: put together piece by piece. */
  kit_greedy: { pieces: number; of_pieces: number; most_tried: number };
  /** What a dive may lose is judged, by what is just seen. */
  kit_limit_judged: { limit_delta_e00: number };
  /** It is the caller's. */
  kit_limit_given: { limit_delta_e00: number };
  /** The dive that loses most against the whole kit. */
  kit_loses_most: { dive: string; delta_e00: number };
  /** As good as with everything on every dive. */
  kit_loses_nothing: { dives: number };
  /** Dives that may as well lie above the limit. */
  kit_dives_close: { dives: string[] };
  /** Pieces that may as well stay at home. */
  kit_pieces_close: { pieces: string[] };
  /** Lights are used one piece at a time. */
  kit_one_light_at_a_time: { lights: number };
  /** A filter that nobody has would help so many dives, one of them by so much. */
  kit_one_more: { filter: NamedFilter; dives: number; delta_e00: number };
  /** None would. */
  kit_no_more_helps: { limit_delta_e00: number };

  /** Of a piece that is taken: without it so many dives are worse, one of them by so much. */
  piece_buys: { dives: number; delta_e00: number };
  /** Without it so many dives cannot be filmed at all. */
  piece_lights: { dives: number };
  /** It holds these filters on so many dives. */
  piece_holds: { filters: string[]; dives: number };
  /** Of a piece that is left: with everything at hand it is used on so many dives, and without it none of them loses more than so much. */
  piece_spared: { dives: number; delta_e00: number };
  /** Even with everything at hand it is not used. */
  piece_never_used: { dives: number };
  /** A filter that fits no camera with these rings and holders. */
  piece_never_fits: { dives: number };
  /** Neutral density is not judged by colour. */
  piece_not_judged: { dives: number };
}
