import { z } from "zod/v3";
import { annotate } from "../field/annotation.js";
import { choice, list, text } from "../field/choice.js";
import { withOptional } from "../field/optional.js";
import { quantity } from "../field/quantity.js";
import { adviceTail } from "../result/common.js";
import { ColourErrorEstimate } from "../result/estimates.js";
import { FilterVerdict } from "../result/filter-choice.js";
import { colourError, density, depth, fNumber, iso, shutter_s } from "../result/quantities.js";
import { FilterHolder } from "../scene/mounting/filter.js";
import { Language } from "../scene/texts-asked.js";
import { mostTrip } from "./values.js";

const idOf = (description: string, example: string) => text({ description, example });
const count = (description: string, example: number, min = 1) =>
  quantity({
    description,
    unit: "1",
    decimals: 0,
    min,
    max: mostTrip.quantity * mostTrip.shelf,
    integer: true,
    example,
  });

export const PieceFrom = z
  .enum(["shelf", "own"])
  .describe("Whose a piece is: of the `shelf`, or the guest's `own`.");
const from = choice(PieceFrom, { description: "Whose it is.", example: "shelf" });

export const RingInUse = z
  .object({ ring_id: idOf("The ring, by its `id`.", "52-67"), from })
  .describe("A step ring in use.");

export const FittingVerdict = z
  .enum(["fits", "fits_with_care"])
  .describe("How a piece goes on a camera, as `filter-mounting` judges it.");

const pieceFields = {
  piece_id: idOf("The filter, by its `id`.", "red-67"),
  from,
  filter_kind: choice(FilterVerdict, { description: "Its kind.", example: "red" }),
  filter_density: density("Its density; absent for a measured filter.", 0.9),
  holder: choice(FilterHolder, {
    description: "What holds it; absent where the camera says nothing of port and lens.",
    example: "screw_on_lens",
  }),
  verdict: choice(FittingVerdict, { description: "Whether that asks for care.", example: "fits" }),
  rings: list(RingInUse, {
    description: "Step rings from lens or port to it, in the order in which they are screwed on.",
    example: [{ ring_id: "52-67", from: "shelf" }],
  }),
};
const mayBeAbsent = ["filter_density", "holder", "verdict"] as const;

export const PieceInUse = z
  .object(withOptional(pieceFields, mayBeAbsent))
  .describe("A filter in a guest's hands.");

export const TripSetting = z
  .object({
    depth_m: depth("Depth.", 5),
    iso: iso("ISO to set there, exactly: on a dial, the nearest third of a stop."),
    f_number: fNumber("f-number to set there."),
    shutter_s: shutter_s("Exposure time there."),
    off_by_stops: quantity({
      description: "How far these settings are off: above 0 too bright, below 0 too dark.",
      unit: "stop",
      decimals: 2,
      min: -200,
      max: 200,
      example: 0,
    }),
  })
  .describe("How the camera is set at a depth.");

export const GuestPlan = z
  .object(
    withOptional(
      {
        guest_id: idOf("The guest.", "g1"),
        piece: PieceInUse.describe("The filter on the lens; absent where it stays bare."),
        colour_error_delta_e00: ColourErrorEstimate.describe(
          "Colour error that is left (CIEDE2000), as the mean over both ends and the middle of the depths. Its spread is that of the guest who is worst off on any dive, carried over. Absent without daylight.",
        ),
        gains_delta_e00: colourError("What the filter takes off it; 0 without one.", 3.4),
        settings: list(TripSetting, {
          description: "How the camera is set at both ends of the depths. Empty without daylight.",
          example: [],
          maxItems: 2,
        }),
        text: text({
          description: "The plan in a few sentences, in the guest's language.",
          example:
            "Mount red-67 (a red filter of density 0.9) from the shelf, screwed onto the lens with 52-67. Expose with ISO 100 at f/5.6.",
        }),
      },
      ["piece", "colour_error_delta_e00", "gains_delta_e00"],
    ),
  )
  .describe("What a guest mounts and sets on a dive.");

export const TripDivePlan = z
  .object(
    withOptional(
      {
        id: idOf("The dive.", "d1"),
        name: text({ description: "What guests call the site.", example: "Gannet Stair" }),
        local_time: text({
          description: "When it begins, by the clocks of the site.",
          example: "2027-01-16T09:30",
        }),
        time_zone: text({ description: "The zone of these.", example: "Etc/GMT+9" }),
        time: text({ description: "When it begins, in UTC (RFC 3339).", example: "2027-01-16T18:30:00Z" }),
        duration_min: quantity({
          description: "How long the calendar keeps free for it.",
          unit: "min",
          decimals: 0,
          min: 5,
          max: 240,
          integer: true,
          example: 60,
        }),
        scene: annotate(z.object({}).describe("Its scene, with every default filled in."), {
          examples: [{ water_type: "IB", min_depth_m: 5, max_depth_m: 18 }],
        }),
        plans: list(GuestPlan, {
          description: "The guests' plans, in your order.",
          example: [],
          maxItems: mostTrip.guests,
        }),
      },
      ["name"],
    ),
  )
  .describe("A dive, and what each guest mounts and sets.");

export const CratePiece = z
  .object(
    withOptional(
      {
        ...pieceFields,
        dive_ids: list(idOf("A dive.", "d1"), { description: "Dives on which it is used.", example: ["d1"] }),
      },
      mayBeAbsent,
    ),
  )
  .describe("A filter of a crate.");

export const GuestCrate = z
  .object({
    guest_id: idOf("The guest.", "g1"),
    language: choice(Language, { description: "Language of the guest's texts.", example: "de" }),
    camera_assumed: list(text({ description: "Name of a field, `bits` for instance.", example: "bits" }), {
      description: "Fields of the camera that a default filled in.",
      example: ["bits"],
    }),
    pieces: list(CratePiece, {
      description: "Filters, each with its dives. Empty where none is used.",
      example: [],
    }),
    text: text({
      description: "The label of the crate, in the guest's language.",
      example: "g1: red-67 for Gannet Stair, with 52-67.",
    }),
  })
  .describe("What goes into a guest's crate.");

export const PackedPiece = z
  .object({
    piece_id: idOf("The filter, by its `id`.", "red-67"),
    quantity: count("How many of it.", 1),
  })
  .describe("A filter of the shelf, and how many of it.");

export const PackedRing = z
  .object({
    ring_id: idOf("The ring, by its `id`.", "52-67"),
    quantity: count("How many of it are used at a time, at most.", 2),
    short_by: count("How many of these the shop lacks.", 0, 0),
  })
  .describe("A ring of the shop, and how many of it.");

const thread = (description: string, example: number) =>
  quantity({ description, unit: "mm", decimals: 1, min: 20, max: 150, example });

export const RingToGet = z
  .object({
    from_mm: thread("Thread that it screws into.", 52),
    to_mm: thread("Thread that it offers.", 67),
    guest_ids: list(idOf("A guest.", "g1"), { description: "Whom it would serve.", example: ["g1"] }),
  })
  .describe("A ring with which a filter of the shelf would fit guests whom none fits now.");

export const TripPacking = z
  .object({
    pieces: list(PackedPiece, {
      description: "Filters of the shelf that go on the boat: as many as are used at a time, at most.",
      example: [{ piece_id: "red-67", quantity: 1 }],
    }),
    rings: list(PackedRing, { description: "Rings of the shop that go with them.", example: [] }),
    rings_to_get: list(RingToGet, { description: "Rings that it is worth getting.", example: [] }),
    not_needed: list(PackedPiece, { description: "What of the shelf nobody needs.", example: [] }),
  })
  .describe("The packing list of the boat.");

export const TripAdviceAnswer = z
  .object({
    id: idOf("The trip.", "packet-2027-01"),
    dives: list(TripDivePlan, {
      description: "Each dive, in your order.",
      example: [],
      maxItems: mostTrip.dives,
    }),
    crates: list(GuestCrate, {
      description: "Each guest's crate, in your order.",
      example: [],
      maxItems: mostTrip.guests,
    }),
    packing: TripPacking.describe("The packing list of the boat."),
    ...adviceTail,
  })
  .describe(
    "The filters of every guest on every dive of a trip, and what goes into each crate and on the boat.",
  );
export type TripAdviceAnswer = z.infer<typeof TripAdviceAnswer>;
