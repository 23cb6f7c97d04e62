import type { Template } from "../item/template.js";

const RATES = [24, 25, 30, 50, 60];
const ANGLES = { beginner: [180], working: [45, 90, 120, 144, 216, 270], expert: [45, 90, 180, 270] };
const FULL_DEG = 360;
/** The time as one over this, 1/s. */
const speed = (fps: number, angle_deg: number): number => (fps * FULL_DEG) / angle_deg;
const LEAST_LOSS_STOPS = 0.4;

/** Shutter angle and frame rate as an exposure time, and what a change of both costs. */
export const shutterAngle: Template = {
  id: "shutter_angle",
  topic: "exposure",
  interaction: "numeric",
  levels: ["beginner", "working", "expert"],
  make({ draw, level, say, show }) {
    const text = say.camera.shutter_angle;
    const fps = draw.pick(RATES);
    const angle_deg = draw.pick(ANGLES[level]);
    const x = speed(fps, angle_deg);
    const angle = show.deg(angle_deg);
    const time = text.time({ fps, angle, x: show.number(x, 1) });
    if (level !== "expert") {
      return {
        given: { fps, angle_deg },
        stem: text.stem({ fps, angle }),
        answer: {
          interaction: "numeric",
          value: x,
          unit: "",
          decimals: 0,
          tolerance: Math.max(1, Math.round(x * 0.02)),
          anticipated: [
            { misconception: "frame_rate_as_time", value: fps },
            { misconception: "shutter_always_half", value: 2 * fps },
            { misconception: "angle_turned_over", value: (fps * angle_deg) / FULL_DEG },
          ],
        },
        steps: [
          { operation: level === "beginner" ? "double" : "multiply", text: time },
          { operation: "recall", text: text.last({ x: show.number(x, 1) }) },
        ],
        sources: ["shutter_angle"],
        basis: "definition",
      };
    }
    const [to_fps, to_angle_deg] = [draw.pick(RATES), draw.pick(ANGLES.expert)];
    const to = speed(to_fps, to_angle_deg);
    const loss = Math.log2(to / x);
    if (loss < LEAST_LOSS_STOPS || to_fps === fps || to_angle_deg === angle_deg) return undefined;
    return {
      given: { fps, angle_deg, to_fps, to_angle_deg },
      stem: text.changeStem({ fps, angle, toFps: to_fps, toAngle: show.deg(to_angle_deg) }),
      answer: {
        interaction: "numeric",
        value: loss,
        unit: "stops",
        decimals: 1,
        tolerance: 0.1,
        anticipated: [
          { misconception: "frame_rate_alone_counts", value: Math.log2(to_fps / fps) },
          { misconception: "angle_alone_counts", value: Math.log2(angle_deg / to_angle_deg) },
          { misconception: "logarithm_to_ten", value: Math.log10(to / x) },
        ],
      },
      steps: [
        { operation: "multiply", text: time },
        {
          operation: "power",
          text: text.change({ from: show.number(x, 1), to: show.number(to, 1), stops: show.stops(loss) }),
        },
      ],
      sources: ["shutter_angle"],
      basis: "definition",
    };
  },
};
