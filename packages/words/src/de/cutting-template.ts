import type { CuttingTemplateTexts } from "../cutting-template-texts.js";
import { cautions } from "./cautions.js";
import { shown, unit } from "./format.js";
import { mountingCautions } from "./mounting-cautions.js";

const length = (mm: number): string => shown(mm, Number.isInteger(mm) ? 0 : 1);
const size = ([width, height]: readonly [number, number]): string =>
  `${length(width)} × ${unit(length(height), "mm")}`;

export const cuttingTemplate: CuttingTemplateTexts = {
  title: "Schablone für eine Folie hinter dem Objektiv",
  sizes: ({ sheet, opening }) => `Folie ${size(sheet)}, Öffnung ${size(opening)}.`,
  steps: [
    "Mit 100 % drucken, nicht an die Seite angepasst.",
    "Den Balken messen. Ist er nicht 50 mm lang, neu drucken.",
    "Die Öffnung selbst messen, bevor du schneidest.",
    "Erst an einer billigen Folie üben, bis sie ohne Zwang und ohne Spalt sitzt.",
  ],
  bar: "50 mm",
  cut: "hier schneiden",
  opening: "die Öffnung: hier kein Klebeband",
  tape: "hier kommt das Klebeband hin",
  contacts: "Kontakte: keine Folie, kein Klebeband",
  cautions: [
    mountingCautions.mount_makers_instructions,
    mountingCautions.mount_sensor_dust,
    cautions.filter_on_dry_land,
  ],
  description: ({ sheet, opening }) =>
    `In Originalgröße gezeichnet: der Umriss einer Folie von ${size(sheet)}, die Öffnung von ${size(opening)} darin, wo das Klebeband hinkommt, wo die Kontakte sind, und ein Balken von 50 mm zum Messen.`,
};
