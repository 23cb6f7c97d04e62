import { z } from "zod/v3";
import { choice, flag, list, text } from "../field/choice.js";
import { type QuantitySpec, quantity } from "../field/quantity.js";
import { AngleEstimate, LengthEstimate, LossEstimate, WholePercentEstimate } from "./estimates.js";
import { angle } from "./quantities.js";

type Length = Pick<QuantitySpec, "description" | "max" | "decimals" | "example">;

function length(spec: Length) {
  return quantity({ ...spec, unit: "mm", min: 0 });
}

function thread(description: string, example: number) {
  return quantity({ description, unit: "mm", decimals: 1, min: 20, max: 150, example });
}

export const ChainRing = z
  .object({
    id: text({ description: "The `id` of the ring in the scene's `rings`.", example: "52-60" }),
    from_mm: thread("Thread that screws into what comes before.", 52),
    to_mm: thread("Thread that it offers.", 60),
    thickness_mm: length({
      description: "By how much it moves forward what is screwed into it.",
      decimals: 1,
      max: 50,
      example: 2.5,
    }),
  })
  .describe("A ring of the chain.");

export const RingChain = z
  .object({
    closes: flag({
      description: "Whether your rings lead from lens or port to the filter without cutting off the corners.",
      example: true,
    }),
    from_mm: thread("Thread of the lens or port.", 52),
    to_mm: thread("Thread of the filter.", 67),
    rings: list(ChainRing, {
      description:
        "Rings in the order in which they are screwed on; empty where none is needed or the chain does not close.",
      example: [
        { id: "52-60", from_mm: 52, to_mm: 60, thickness_mm: 2.5 },
        { id: "60-67", from_mm: 60, to_mm: 67, thickness_mm: 2.5 },
      ],
    }),
    total_thickness_mm: length({
      description: "By how much they move the filter forward together.",
      decimals: 1,
      max: 1600,
      example: 5,
    }),
    buy_from_mm: thread(
      "Ring to buy: thread that it screws into; present where the chain does not close, or narrows on its way.",
      52,
    ).optional(),
    buy_to_mm: thread("Ring to buy: thread that it offers.", 67).optional(),
  })
  .describe("The way over rings from the thread of lens or port to that of the filter.");

export const VignettingGrade = z
  .enum(["clear", "slight", "dark", "black"])
  .describe(
    "How dark filter and rings make the corner: `clear` below 0.1 stop, `slight` below 0.5, `dark` beyond, `black` where no light is left.",
  );

export const Vignetting = z
  .object({
    pupil_distance_mm: LengthEstimate.describe(
      "From where the first ring or the filter sits back to the entrance pupil; its spread is what makes the rest uncertain.",
    ),
    pupil_distance_assumed: flag({
      description: "Whether that distance is assumed, since the scene has no `entrance_pupil_distance_mm`.",
      example: true,
    }),
    corner_half_field_deg: angle("Angle between the axis and the corner, in air at the lens.", 53.5),
    clear_half_field_deg: AngleEstimate.describe(
      "Angle from the axis up to which filter and rings take no light, in air at the lens.",
    ),
    corner_light_percent: WholePercentEstimate.describe("Light that filter and rings leave in the corner."),
    corner_loss_stops: LossEstimate.describe(
      "The same as a loss; absent where the corner may be black.",
    ).optional(),
    grade: choice(VignettingGrade, {
      description: "The same in a word, by what is likely.",
      example: "clear",
    }),
  })
  .describe("What filter and rings cost the corners; the lens's own falloff comes on top.");

export const SheetFocus = z
  .enum(["in_reach", "within_depth_of_field", "past_infinity_needed"])
  .describe(
    "Whether far things stay sharp with a sheet behind the lens: always, since nothing behind this dome appears farther than the lens can focus (`in_reach`); since depth of field hides the blur (`within_depth_of_field`); or only with a lens that turns past infinity (`past_infinity_needed`).",
  );

function cut(description: string, example: number) {
  return length({ description, decimals: 1, max: 100, example });
}

export const RearSheet = z
  .object({
    cut_width_mm: cut("Width to cut; absent where the opening is not given.", 29.5).optional(),
    cut_height_mm: cut("Height to cut; absent where the opening is not given.", 23.5).optional(),
    focus_shift_mm: length({
      description: "How far the sheet moves the image back.",
      decimals: 3,
      max: 10,
      example: 0.033,
    }),
    blur_if_not_refocused_mm: length({
      description: "Blur on the sensor if you do not refocus the lens.",
      decimals: 4,
      max: 10,
      example: 0.0042,
    }),
    blur_allowed_mm: length({
      description: "Blur that is usually allowed: the picture's diagonal over 1500.",
      decimals: 3,
      max: 10,
      example: 0.029,
    }),
    focus: choice(SheetFocus, {
      description:
        "Whether far things stay sharp; absent where that depends on a dome's radius that you did not give.",
      example: "in_reach",
    }).optional(),
    farthest_sharp_m: quantity({
      description:
        "True distance of the farthest thing that a lens which stops at infinity still focuses; absent where all is in reach, or without the dome's radius.",
      unit: "m",
      decimals: 1,
      min: 0,
      max: 1e12,
      example: 6.9,
    }).optional(),
  })
  .describe("A sheet behind the lens: its size, and what it does to focus.");
