import { exposureLoss } from "@sunfathom/planner";
import type { Template } from "../item/template.js";
import { remembered } from "../light/remember.js";
import { byDay, type Water } from "../light/scenes.js";
import { ISO_DIAL, onDial } from "./dial.js";

const SUN_DEG = 50;
const SLACK = 0.03;
const LEAST_LOSS_STOPS = 0.25;
const SAME_M = [3, 5, 8, 12].map((m) => [m, m] as const);
const DEEPER_M = [
  [3, 8],
  [5, 12],
  [8, 15],
  [3, 12],
] as const;
const tenth = (value: number): number => Number(value.toFixed(1));

/** How much light the filmed side has with the sun on a side, as exposure value. */
const subject_ev = remembered(
  (water: Water, depth_m: number, sun_side: string): number =>
    exposureLoss({
      ...byDay(water, SUN_DEG, depth_m),
      sun_side: sun_side as "behind_camera" | "beside" | "in_frame",
    }).depths[0].exposure_value_ev100.likely,
);

/**
 * The sun behind the camera, beside it and in the frame; experts go deeper on the way. What it costs is stated, so its uncertainty
 * does not matter.
 */
export const sunTurn: Template = {
  id: "sun_turn",
  topic: "exposure",
  interaction: "numeric",
  levels: ["working", "expert"],
  make({ draw, level, say, show }) {
    const water = draw.pick(["IB", "II", "1C"] as const);
    const [from_m, to_m] = draw.pick(level === "expert" ? DEEPER_M : SAME_M);
    const side = draw.pick(["beside", "in_frame"] as const);
    const from_ev = subject_ev(water, from_m, "behind_camera");
    const turned_ev = subject_ev(water, from_m, side);
    const turn_stops = tenth(from_ev - turned_ev);
    const deeper_stops = tenth(turned_ev - subject_ev(water, to_m, side));
    const loss = tenth(turn_stops + deeper_stops);
    if (turn_stops < LEAST_LOSS_STOPS) return undefined;
    const iso = draw.pick([100, 125, 160, 200, 250, 320, 400, 500, 640]);
    const wanted = iso * 2 ** loss;
    const right = onDial(ISO_DIAL, wanted);
    if (right === undefined) return undefined;
    const [value, other] = right;
    const text = say.camera.sun_turn;
    const deeper = to_m > from_m;
    const told = {
      depth: show.m(from_m),
      water: say.common.water[water],
      iso: show.iso(iso),
      side: text.side[side],
      loss: show.stops(turn_stops),
    };
    return {
      given: { water, depth_m: from_m, to_m, side, iso, loss_stops: loss },
      stem: deeper
        ? text.deeperStem({ ...told, to: show.m(to_m), more: show.stops(deeper_stops) })
        : text.stem(told),
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
          ...(deeper
            ? ([
                { misconception: "part_left_out", value: iso * 2 ** turn_stops },
                { misconception: "loss_taken_for_factor", value: iso * loss },
              ] as const)
            : []),
        ],
      },
      steps: [
        ...(deeper
          ? [
              {
                operation: "add" as const,
                text: text.sum({
                  turn: show.number(turn_stops, 1),
                  more: show.number(deeper_stops, 1),
                  loss: show.stops(loss),
                }),
              },
            ]
          : []),
        {
          operation: "power",
          text: text.loss({
            iso,
            loss: show.stops(loss),
            stops: show.number(loss, 1),
            result: show.fixed(wanted, 0),
          }),
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
