/** The one place where the quiz knows what languages there are. Everything else is handed its texts. */
import { type QuizLanguage as Language, type QuizTexts, quizTexts } from "@sunfathom/words";

/** Every text of the quiz in one language. */
export type Catalogue = QuizTexts;

export type { Language };

export const CATALOGUES: Readonly<Record<Language, Catalogue>> = { en: quizTexts };
