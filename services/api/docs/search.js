// Finds calls by their words and by the fields that they take. Pure, as samples.js is.

/** @typedef {{ id: string, title: string, text: string }} Call */

/** @param {any} description prepared by samples.js @returns {Call[]} */
export function searchable({ paths, components }) {
  return Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(/** @type {Record<string, any>} */ (methods)).map(([method, operation]) => {
      const [media] = Object.values(operation.requestBody?.content ?? {});
      const component = /** @type {any} */ (media)?.schema.$ref?.split("/").at(-1);
      const fields = [
        ...Object.keys(components.schemas[component]?.properties ?? {}),
        ...operation.parameters.map((/** @type {{ name: string }} */ { name }) => name),
      ];
      return {
        // As the renderer names what it shows.
        id: `${method}-${path.replace(/[{}]/g, "-")}`,
        title: `${method.toUpperCase()} ${path}: ${operation.summary}`,
        text: [path, operation.summary, operation.description, ...fields].join(" ").toLowerCase(),
      };
    }),
  );
}

/**
 * Calls that have all the words, those that have them in their titles first; none for no word.
 * @param {Call[]} calls
 * @param {string} words
 */
export function matching(calls, words) {
  const parts = words.toLowerCase().split(/\s+/).filter(Boolean);
  if (parts.length === 0) return [];
  const hits = calls.filter(({ text }) => parts.every((part) => text.includes(part)));
  const inTitle = (/** @type {Call} */ { title }) =>
    parts.every((part) => title.toLowerCase().includes(part));
  return [...hits.filter(inTitle), ...hits.filter((call) => !inTitle(call))];
}
