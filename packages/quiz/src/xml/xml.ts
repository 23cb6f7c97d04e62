/** Trees of elements as well-formed XML 1.0. */

export interface Element {
  name: string;
  attributes: Readonly<Record<string, string | number>>;
  children: readonly Node[];
}
export interface Text {
  text: string;
}
export type Node = Element | Text;

export const el = (name: string, attributes: Element["attributes"] = {}, ...children: Node[]): Element => ({
  name,
  attributes,
  children,
});
export const text = (content: string): Text => ({ text: content });

/** Control characters, lone surrogates and non-characters that XML 1.0 does not allow in any form. */
const FORBIDDEN = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

const escaped = (content: string): string =>
  content
    .replace(FORBIDDEN, "\ufffd")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;");
const quoted = (value: string | number): string => escaped(String(value)).replaceAll('"', "&quot;");

function write(node: Node): string {
  if ("text" in node) return escaped(node.text);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${quoted(value)}"`)
    .join("");
  if (node.children.length === 0) return `<${node.name}${attributes}/>`;
  return `<${node.name}${attributes}>${node.children.map(write).join("")}</${node.name}>`;
}

/** A document with this root. */
export const xml = (root: Element): string => `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
