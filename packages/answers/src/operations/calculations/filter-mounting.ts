import {
  type FilterMountingAnswer,
  filterMountingAnswerForm as form,
  type MountingExampleName,
} from "@sunfathom/contract";
import { filterMounting as plan } from "@sunfathom/planner";
import type { TextUnits, Words } from "@sunfathom/words";
import { say as sayCode } from "../../say/say.js";
import { sayParts } from "../../say/say-parts.js";
import { mountingScene } from "../../scene/mounting-scene.js";
import type { About } from "../about.js";
import { type Saying, taking } from "../calculation.js";

export const say = (
  planned: ReturnType<typeof plan>,
  texts: Words["filter-mounting"],
  units?: TextUnits,
) => ({
  ...sayParts(planned, texts, units),
  options: planned.options.map((option) => ({ ...option, text: sayCode(option, texts.reasons, units) })),
  procedure: planned.procedure.map((step) => sayCode(step, texts.procedure, units)),
  procedure_steps: planned.procedure,
});

export const filterMounting = taking(mountingScene)({
  name: "filter-mounting",
  form,
  plan,
  say: say satisfies Saying<ReturnType<typeof say>, FilterMountingAnswer>,
});

export const about: About<MountingExampleName> = {
  summary: "Where the filter goes on this lens and port",
  description:
    "On the lens, in front of the port or behind the lens, and what holds it; the rings to screw on or to buy; what filter and rings cost the corners; for a sheet behind the lens its size and what it does to focus; and what to do, step by step.",
  examples: ["fisheye_behind_dome", "flat_port_and_rings", "action_camera_flip"],
  brief: ["holder", "place", "verdict", "ring_chain.rings.id"],
  cost: () => 2,
};
