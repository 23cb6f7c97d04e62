import { ConnectionError } from "../core/errors.js";
import type { Language } from "../generated/types.js";
import type { Tongue } from "./tongue.js";

/** English comes with each part; every other language is a file of its own, which only those load who ask for it. */
const others: Readonly<Record<Exclude<Language, "en">, () => Promise<Tongue>>> = {
  de: async () => (await import("./languages/de.js")).tongue,
  es: async () => (await import("./languages/es.js")).tongue,
  fr: async () => (await import("./languages/fr.js")).tongue,
};

const isOther = (language: unknown): language is keyof typeof others =>
  Object.hasOwn(others, String(language));

/**
 * The texts of the language that a scene asks for, or the client where the scene asks for none that there is; undefined for
 * English, which needs no loading.
 * @throws ConnectionError where they cannot be loaded
 * @throws TypeError where the client's language is none that there is
 */
export async function textsIn(asked: unknown, otherwise: Language): Promise<Tongue | undefined> {
  const language = asked === "en" || isOther(asked) ? asked : otherwise;
  if (language === "en") return undefined;
  if (!isOther(language)) {
    const known = ["en", ...Object.keys(others)].join(", ");
    throw new TypeError(`language is ${JSON.stringify(language)}, but must be one of ${known}.`);
  }
  return others[language]().catch((cause: unknown) => {
    throw new ConnectionError(
      "The texts of this language are not here: wait for ready() while there is a network.",
      { cause },
    );
  });
}
