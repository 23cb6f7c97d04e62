/**
 * `imsmanifest.xml` of a SCORM 1.2 package: IMS Content Packaging 1.1.2 with the elements and attributes of ADL, and metadata of
 * IMS Learning Resource Meta-Data 1.2.1 (ADL, SCORM 1.2 Content Aggregation Model). One page that reports, and its files.
 */
import type { Level } from "../item/item.js";
import { difficultyWord } from "../xml/difficulty-word.js";
import { type Element, el, text, xml } from "../xml/xml.js";

interface Described {
  identifier: string;
  title: string;
  language: string;
  /** The first is the page that a platform opens. */
  files: readonly string[];
  description: string;
  keywords: readonly string[];
  level: Level;
  /** Mean over the questions, 0 to 1. */
  difficulty: number;
}

const CP = "http://www.imsproject.org/xsd/imscp_rootv1p1p2";
const ADL = "http://www.adlnet.org/xsd/adlcp_rootv1p2";
const MD = "http://www.imsglobal.org/xsd/imsmd_rootv1p2p1";

const md = (name: string, ...children: Element[]): Element => el(`imsmd:${name}`, {}, ...children);
const said = (language: string, content: string): Element =>
  el("imsmd:langstring", { "xml:lang": language }, text(content));
/** A word of a list; `x-none` says that it is of no language. */
const word = (name: string, value: string): Element =>
  md(name, md("source", said("x-none", "LOMv1.0")), md("value", said("x-none", value)));

function metadata({ title, language, description, keywords, level, difficulty }: Described): Element {
  return el(
    "metadata",
    {},
    el("schema", {}, text("ADL SCORM")),
    el("schemaversion", {}, text("1.2")),
    md(
      "lom",
      md(
        "general",
        md("title", said(language, title)),
        el("imsmd:language", {}, text(language)),
        md("description", said(language, description)),
        ...[level, ...keywords].map((keyword) => md("keyword", said("x-none", keyword))),
      ),
      md(
        "educational",
        word("learningresourcetype", "Exercise"),
        word("difficulty", difficultyWord(difficulty)),
      ),
    ),
  );
}

export function manifestOf(described: Described): string {
  const { identifier, title, files } = described;
  const [page = ""] = files;
  return xml(
    el(
      "manifest",
      {
        identifier,
        version: "1.1",
        xmlns: CP,
        "xmlns:adlcp": ADL,
        "xmlns:imsmd": MD,
        "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
        "xsi:schemaLocation": `${CP} imscp_rootv1p1p2.xsd ${ADL} adlcp_rootv1p2.xsd ${MD} imsmd_rootv1p2p1.xsd`,
      },
      metadata(described),
      el(
        "organizations",
        { default: "paper" },
        el(
          "organization",
          { identifier: "paper" },
          el("title", {}, text(title)),
          el(
            "item",
            { identifier: "questions", identifierref: "player", isvisible: "true" },
            el("title", {}, text(title)),
          ),
        ),
      ),
      el(
        "resources",
        {},
        el(
          "resource",
          { identifier: "player", type: "webcontent", "adlcp:scormtype": "sco", href: page },
          ...files.map((href) => el("file", { href })),
        ),
      ),
    ),
  );
}
