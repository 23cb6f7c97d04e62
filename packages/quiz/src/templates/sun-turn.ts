import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";
import { ISO_DIAL, onDial } from "./dial.js";

const SUN_DEG = 50;
const SLACK = 0.03;
const LEAST_LOSS_STOPS = 0.25;

/** How much light the filmed side has with the sun on a side, as exposure value. */
const subject_ev = remembered(
  (water: Water, depth_m: number, sun_side: string): number =>
    exposureLoss({
      ...byDay(water, SUN_DEG, depth_m),
      sun_side: sun_side as "behind_camera" | "beside" | "in_frame",
    }).depths[0].exposure_value_ev100.likely,
);

/** The sun behind the camera, beside it and in the frame. What it costs is stated, so its uncertainty does not matter. */
export const sunTurn: Template = {
  id: "sun_turn",
  topic: "exposure",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II", "1C"] as const);
    const depth_m = draw.pick([3, 5, 8, 12]);
    const side = draw.pick(
      level === "beginner" ? (["in_frame"] as const) : (["beside", "in_frame"] as const),
    );
    const exact = subject_ev(water, depth_m, "behind_camera") - subject_ev(water, depth_m, side);
    const loss = level === "beginner" ? Math.round(exact) : Number(exact.toFixed(1));
    if (loss < LEAST_LOSS_STOPS) return undefined;
    const iso = draw.pick([100, 125, 160, 200, 250, 320, 400, 500, 640]);
    const wanted = iso * 2 ** loss;
    const right = onDial(ISO_DIAL, wanted);
    if (right === undefined) return undefined;
    const [value, other] = right;
    const text = say.camera.sun_turn;
    return {
      given: { water, depth_m, side, iso, loss_stops: loss },
      stem: text.stem({
        depth: show.m(depth_m),
        water: say.common.water[water],
        loss: show.stops(loss),
        iso: show.iso(iso),
        side: text.side[side],
      }),
      answer: {
        interaction: "numeric",
        value,
        unit: "",
        decimals: 0,
        tolerance: Math.round(value * SLACK),
        accepted: {
          low: Math.round(Math.min(value, other ?? value) * (1 - SLACK)),
          high: Math.round(Math.max(value, other ?? value) * (1 + SLACK)),
        },
        anticipated: [
          { misconception: "iso_lowered_for_loss", value: iso / 2 ** loss },
          { misconception: "loss_taken_for_factor", value: iso * (loss > 1 ? loss : 1 / loss) },
        ],
      },
      steps: [
        {
          operation: level === "beginner" ? "double" : "power",
          text: text.loss({ iso, loss: show.stops(loss), result: show.fixed(wanted, 0) }),
        },
        {
          operation: "recall",
          text: text.last({ result: String(value), others: other === undefined ? [] : [String(other)] }),
        },
      ],
      sources: ["iso_speed", "light_field", "jerlov_1976"],
      basis: "computed",
    };
  },
};
