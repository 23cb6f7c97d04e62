import { drawAim } from "../item/aim.js";
import { LEVELS } from "../item/item.js";
import { CATALOGUES } from "../messages/catalogue.js";
import { Draw } from "../random/draw.js";
import { TEMPLATES } from "../templates/table.js";

/** After so many draws of each template few scenes of the grid are left. */
const ROUNDS = 40;

/**
 * Works out beforehand what questions rest on, one draft with each step, so that the first papers of a process are made as fast
 * as later ones. Every template has its turn early. The steps together take seconds, most of them none.
 */
export function* warmUp(): Generator<undefined, void> {
  const maker = { say: CATALOGUES.en, show: CATALOGUES.en.show("metric") };
  for (let round = 0; round < ROUNDS; round++) {
    for (const level of LEVELS) {
      for (const template of TEMPLATES.filter(({ levels }) => levels.includes(level))) {
        const draw = new Draw(`warm up ${level} ${round}`);
        template.make({ ...maker, level, draw, aim: drawAim(draw) });
        yield;
      }
    }
  }
}
