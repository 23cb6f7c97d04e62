import { type Operation, operationsIn } from "@sunfathom/answers";
import { type Language, languages } from "@sunfathom/contract";
import type { PictureTexts, ProblemTexts, TripTexts, Words } from "@sunfathom/words";
import { de, pictures as dePictures, trips as deTrips } from "@sunfathom/words/de";
import { problems as deProblems } from "@sunfathom/words/de/problems";
import { en, pictures as enPictures, trips as enTrips } from "@sunfathom/words/en";
import { problems as enProblems } from "@sunfathom/words/en/problems";
import { es, pictures as esPictures, trips as esTrips } from "@sunfathom/words/es";
import { problems as esProblems } from "@sunfathom/words/es/problems";
import { fr, pictures as frPictures, trips as frTrips } from "@sunfathom/words/fr";
import { problems as frProblems } from "@sunfathom/words/fr/problems";

/** The texts of every language. One that is left out is an error of the compiler. */
const texts: Readonly<
  Record<Language, { words: Words; problems: ProblemTexts; pictures: PictureTexts; trips: TripTexts }>
> = {
  en: { words: en, problems: enProblems, pictures: enPictures, trips: enTrips },
  de: { words: de, problems: deProblems, pictures: dePictures, trips: deTrips },
  es: { words: es, problems: esProblems, pictures: esPictures, trips: esTrips },
  fr: { words: fr, problems: frProblems, pictures: frPictures, trips: frTrips },
};

/** All that the service says in one language. */
export interface Tongue {
  language: Language;
  /** Every calculation. */
  operations: readonly Operation[];
  problems: ProblemTexts;
  pictures: PictureTexts;
  words: Words;
  trips: TripTexts;
}

const tongueIn = (language: Language): Tongue => {
  const { words, problems, pictures, trips } = texts[language];
  return { language, problems, pictures, words, trips, operations: operationsIn(words, problems) };
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
