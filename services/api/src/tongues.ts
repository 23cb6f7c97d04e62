import { type Operation, operationsIn } from "@sunfathom/answers";
import { type Language, languages } from "@sunfathom/contract";
import type { PictureTexts, ProblemTexts, Words } from "@sunfathom/words";
import { de, pictures as dePictures } from "@sunfathom/words/de";
import { problems as deProblems } from "@sunfathom/words/de/problems";
import { en, pictures as enPictures } from "@sunfathom/words/en";
import { problems as enProblems } from "@sunfathom/words/en/problems";
import { es, pictures as esPictures } from "@sunfathom/words/es";
import { problems as esProblems } from "@sunfathom/words/es/problems";
import { fr, pictures as frPictures } from "@sunfathom/words/fr";
import { problems as frProblems } from "@sunfathom/words/fr/problems";

/** The texts of every language. One that is left out is an error of the compiler. */
const texts: Readonly<Record<Language, { words: Words; problems: ProblemTexts; pictures: PictureTexts }>> = {
  en: { words: en, problems: enProblems, pictures: enPictures },
  de: { words: de, problems: deProblems, pictures: dePictures },
  es: { words: es, problems: esProblems, pictures: esPictures },
  fr: { words: fr, problems: frProblems, pictures: frPictures },
};

/** All that the service says in one language. */
export interface Tongue {
  language: Language;
  /** Every calculation. */
  operations: readonly Operation[];
  problems: ProblemTexts;
  pictures: PictureTexts;
}

const tongueIn = (language: Language): Tongue => {
  const { words, problems, pictures } = texts[language];
  return { language, problems, pictures, operations: operationsIn(words, problems) };
};

const tongues = new Map(languages.map((language) => [language, tongueIn(language)]));

/** @throws where there is no such language: then the program is wrong */
export function tongueOf(language: Language): Tongue {
  const tongue = tongues.get(language);
  if (tongue === undefined) throw new Error(`Nobody speaks ${language}.`);
  return tongue;
}

/** A calculation in a language, by its name. */
export function operationIn({ operations }: Tongue, wanted: Operation["name"]): Operation {
  const operation = operations.find(({ name }) => name === wanted);
  if (operation === undefined) throw new Error(`There is no calculation ${wanted}.`);
  return operation;
}
