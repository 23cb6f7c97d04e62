/** Trees of elements as SVG: texts and values cannot break out of their place. */

export interface Element {
  name: string;
  attributes: Readonly<Record<string, string | number>>;
  children: readonly (Element | string)[];
}

export const el = (
  name: string,
  attributes: Element["attributes"] = {},
  ...children: readonly (Element | string)[]
): Element => ({ name, attributes, children });

/** Control characters, lone surrogates and non-characters that XML 1.0 does not allow in any form. */
const FORBIDDEN = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (content: string): string =>
  content
    .replace(FORBIDDEN, "\ufffd")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;");
const quoted = (value: string): string => escaped(value).replaceAll('"', "&quot;");

/** A tenth of a pixel is finer than anyone sees. */
const shown = (value: string | number): string =>
  typeof value === "string" ? value : String(Math.round(value * 10) / 10);

export function write(node: Element | string): string {
  if (typeof node === "string") return escaped(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${quoted(shown(value))}"`)
    .join("");
  if (node.children.length === 0) return `<${node.name}${attributes}/>`;
  return `<${node.name}${attributes}>${node.children.map(write).join("")}</${node.name}>`;
}
