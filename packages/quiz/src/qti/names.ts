/**
 * The two spellings of one markup. Trees are built with the names of QTI 2.1; QTI 3.0 writes the same names in kebab-case,
 * elements with the prefix `qti-` (1EdTech, QTI 3.0 ASI specification and its migration notes).
 */
import { type Element, el, type Node } from "../xml/xml.js";

export type QtiVersion = "3.0" | "2.1";

/** Elements of HTML, which both versions write alike. */
const HTML = new Set(["div", "p", "img", "ol", "ul", "li"]);
/** Attributes that keep their spelling. */
const KEPT = /^(?:xmlns|xmlns:|xsi:|xml:)/;

const kebab = (name: string): string => name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);

function renamed(node: Node): Node {
  if ("text" in node) return node;
  const { name, attributes, children } = node;
  const html = HTML.has(name);
  return {
    name: html ? name : `qti-${kebab(name)}`,
    attributes: html
      ? attributes
      : Object.fromEntries(
          Object.entries(attributes).map(([key, value]) => [KEPT.test(key) ? key : kebab(key), value]),
        ),
    children: children.map(renamed),
  };
}

/** A tree in the spelling of a version, its root in the version's namespace. */
export function inVersion(root: Element, version: QtiVersion): Element {
  const { namespace, schema } = ASI[version];
  const tree = version === "3.0" ? renamed(root) : root;
  if ("text" in tree) return root;
  return el(
    tree.name,
    {
      xmlns: namespace,
      "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
      "xsi:schemaLocation": `${namespace} ${schema}`,
      ...tree.attributes,
    },
    ...tree.children,
  );
}

const ASI = {
  "3.0": {
    namespace: "http://www.imsglobal.org/xsd/imsqtiasi_v3p0",
    schema: "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd",
  },
  "2.1": {
    namespace: "http://www.imsglobal.org/xsd/imsqti_v2p1",
    schema: "http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd",
  },
} as const;
