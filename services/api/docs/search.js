// Finds calls by their words and by the fields that they take. Pure, as samples.js is.

/** @typedef {{ id: string, title: string, text: string, takes: number }} Call */

/** @param {any} description prepared by samples.js @returns {Call[]} */
export function searchable({ paths, components }) {
  /** @param {any} operation @returns {string[]} */
  const fieldsOf = ({ requestBody, parameters }) => {
    const [media] = Object.values(requestBody?.content ?? {});
    const component = /** @type {any} */ (media)?.schema.$ref?.split("/").at(-1);
    return [
      ...Object.keys(components.schemas[component]?.properties ?? {}),
      ...parameters.map((/** @type {{ name: string }} */ { name }) => name),
    ];
  };
  return Object.entries(paths).flatMap(([path, methods]) => {
    // By GET a call takes less, and is the same one.
    const takes = Math.max(...Object.values(methods).map((operation) => fieldsOf(operation).length));
    return Object.entries(/** @type {Record<string, any>} */ (methods)).map(([method, operation]) => {
      const fields = fieldsOf(operation);
      return {
        // As the renderer names what it shows.
        id: `${method}-${path.replace(/[{}]/g, "-")}`,
        title: `${method.toUpperCase()} ${path}: ${operation.summary}`,
        text: [path, operation.summary, operation.description, ...fields].join(" ").toLowerCase(),
        takes,
      };
    });
  });
}

/**
 * Calls that have all the words, those that have them in their titles first, then those that take fewer fields, of which a word that is
 * one of them says more; none for no word.
 * @param {Call[]} calls
 * @param {string} words
 */
export function matching(calls, words) {
  const parts = words.toLowerCase().split(/\s+/).filter(Boolean);
  if (parts.length === 0) return [];
  const hits = calls.filter(({ text }) => parts.every((part) => text.includes(part)));
  const inTitle = (/** @type {Call} */ { title }) =>
    parts.every((part) => title.toLowerCase().includes(part));
  const others = hits.filter((call) => !inTitle(call)).sort((a, b) => a.takes - b.takes);
  return [...hits.filter(inTitle), ...others];
}
