import type { QuizTexts } from "../../en/quiz/catalogue.js";
import { balance } from "./balance.js";
import { camera } from "./camera.js";
import { citations, common, modelCitations } from "./common.js";
import { dive } from "./dive.js";
import { exposure } from "./exposure.js";
import { filter } from "./filter.js";
import { grading } from "./grading.js";
import { lamps } from "./lamps.js";
import { light } from "./light.js";
import { misconceptionsOfLight } from "./misconceptions-of-light.js";
import { misconceptionsOfWork } from "./misconceptions-of-work.js";
import { more } from "./more.js";
import { mounting } from "./mounting.js";
import { practice } from "./practice.js";
import { safety } from "./safety.js";
import { showIn } from "./show.js";

/** Todos los textos de preguntas, notas y paquetes, por tema y plantilla. */
export const quizTexts: QuizTexts = {
  show: showIn,
  common,
  citations,
  modelCitations,
  misconceptions: { ...misconceptionsOfLight, ...misconceptionsOfWork },
  light,
  filter,
  exposure,
  balance,
  lamps,
  grading,
  mounting,
  safety,
  camera,
  more,
  dive,
  practice,
};
