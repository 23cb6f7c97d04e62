/** The one place where the quiz knows what languages there are. Everything else is handed its texts. */
import type { CautionCode } from "@sunfathom/planner";
import { quizTexts as en, type QuizLanguage as Language, type QuizTexts } from "@sunfathom/words";
import { cautions as enCautions } from "@sunfathom/words/en";
import { cautions as esCautions } from "@sunfathom/words/es";
import { quizTexts as es } from "@sunfathom/words/es/quiz";

/** Every text of the quiz in one language. */
export interface Catalogue extends QuizTexts {
  language: Language;
  cautions: Readonly<Record<CautionCode, string>>;
  /** Signs that may set thousands off where a learner types a number, and not only decimals. */
  thousands: readonly string[];
}

export type { Language };

export const CATALOGUES: Readonly<Record<Language, Catalogue>> = {
  en: { ...en, language: "en", cautions: enCautions, thousands: [","] },
  es: { ...es, language: "es", cautions: esCautions, thousands: [".", ","] },
};

export const LANGUAGES = Object.keys(CATALOGUES) as Language[];
