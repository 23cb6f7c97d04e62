import { ConnectionError } from "../core/errors.js";
import type { Language } from "../generated/types.js";
import type { Tongue } from "./tongue.js";

/** English comes with each part; every other language is a file of its own, which only those load who ask for it. */
const others: Readonly<Record<Exclude<Language, "en">, () => Promise<Tongue>>> = {
  de: async () => (await import("./languages/de.js")).tongue,
  es: async () => (await import("./languages/es.js")).tongue,
  fr: async () => (await import("./languages/fr.js")).tongue,
};

/**
 * The texts of a language; undefined for English, which needs no loading.
 * @throws ConnectionError where they cannot be loaded
 * @throws TypeError where there is no such language
 */
export async function textsIn(language: Language): Promise<Tongue | undefined> {
  if (language === "en") return undefined;
  const load: (() => Promise<Tongue>) | undefined = others[language];
  if (load === undefined) {
    const known = ["en", ...Object.keys(others)].join(", ");
    throw new TypeError(`language is ${JSON.stringify(language)}, but must be one of ${known}.`);
  }
  return load().catch((cause: unknown) => {
    throw new ConnectionError(
      "The texts of this language are not here: wait for ready() while there is a network.",
      {
        cause,
      },
    );
  });
}

/** The language that a scene asks for, where it asks for one that there is. */
export function languageIn(body: unknown): Language | undefined {
  const asked = typeof body === "object" && body !== null && "language" in body ? body.language : undefined;
  return asked === "en" || Object.hasOwn(others, String(asked)) ? (asked as Language) : undefined;
}
