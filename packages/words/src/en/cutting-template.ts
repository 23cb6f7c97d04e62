import type { CuttingTemplateTexts } from "../cutting-template-texts.js";
import { cautions } from "./cautions.js";
import { shown } from "./format.js";
import { mountingCautions } from "./mounting-cautions.js";

const length = (mm: number): string => shown(mm, Number.isInteger(mm) ? 0 : 1);
const size = ([width, height]: readonly [number, number]): string =>
  `${length(width)} × ${length(height)} mm`;

export const cuttingTemplate: CuttingTemplateTexts = {
  title: "Template for a sheet behind the lens",
  sizes: ({ sheet, opening }) => `Sheet ${size(sheet)}, opening ${size(opening)}.`,
  steps: [
    "Print it at 100 %, not fitted to the page.",
    "Measure the bar. If it is not 50 mm long, print again.",
    "Measure the opening yourself before you cut.",
    "Practise on a cheap sheet first, until it fits without force or gaps.",
  ],
  bar: "50 mm",
  cut: "cut here",
  opening: "the opening: no tape inside",
  tape: "tape goes here",
  contacts: "contacts: no sheet, no tape",
  cautions: [
    mountingCautions.mount_makers_instructions,
    mountingCautions.mount_sensor_dust,
    cautions.filter_on_dry_land,
  ],
  description: ({ sheet, opening }) =>
    `Drawn at full size: the outline of a sheet of ${size(sheet)}, the opening of ${size(opening)} within it, where the tape goes, where the contacts are, and a bar of 50 mm to measure.`,
};
