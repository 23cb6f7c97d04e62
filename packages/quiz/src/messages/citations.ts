import { models } from "@sunfathom/planner";
import type { CitationId } from "@sunfathom/words";
import type { Catalogue } from "./catalogue.js";

const MODEL_SOURCES = new Map(models().map(({ id, source }) => [id, source]));

/**
 * A source as text, for learners: the catalogue's, or what the model says of its tables and formulas.
 * @throws RangeError for an id that neither knows: a mistake in a template.
 */
export function citation({ citations, modelCitations }: Catalogue, id: string): string {
  const found = Object.hasOwn(citations, id)
    ? citations[id as CitationId]
    : (modelCitations[id] ?? MODEL_SOURCES.get(id));
  if (found === undefined) throw new RangeError(`No source is known as ${id}.`);
  return found;
}
