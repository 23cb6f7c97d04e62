// Which children each element may have, in which order, and which attributes it must have: the content groups of the XML binding
// of QTI 2.1 (1EdTech, imsqti_v2p1.xsd), which QTI 3.0 keeps under its own spelling but for the body of modal feedback. Written
// down from memory of the schemas: quick to run, and no substitute for the schemas themselves (see README.md).
import { XMLParser } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { type Item, LEVELS } from "../item/item.js";
import { itemsFor } from "../paper/items-for.js";
import type { QtiVersion } from "./names.js";
import { packageFiles } from "./package-files.js";

const items = LEVELS.flatMap((level) =>
  itemsFor({ seed: "content", level, count: 40, units: "metric", language: "en" }),
).map((item, i): Item => ({ ...item, id: `q${i + 1}` }));

const expression =
  "(?:variable|correct|baseValue|mapResponse|isNull|match|and|gte|lte|ordered|sum|testVariables) ";
const rule = "(?:responseCondition|setOutcomeValue) ";
const flow = "(?:p|div|ul|ol) ";
const block = `(?:${flow}|rubricBlock |choiceInteraction |orderInteraction |matchInteraction )`;

/** Children as a pattern over names, each with a blank behind it, and attributes that must be there. */
const RULES: Readonly<Record<string, { children: string; attributes?: readonly string[] }>> = {
  assessmentItem: {
    children:
      "(responseDeclaration )*(outcomeDeclaration )*(templateDeclaration )*(templateProcessing )?(stylesheet )*(itemBody )?(responseProcessing )?(modalFeedback )*",
    attributes: ["identifier", "title", "adaptive", "timeDependent"],
  },
  responseDeclaration: {
    children: "(defaultValue )?(correctResponse )?(mapping )?(areaMapping )?",
    attributes: ["identifier", "cardinality", "baseType"],
  },
  outcomeDeclaration: {
    children: "(defaultValue )?(matchTable |interpolationTable )?",
    attributes: ["identifier", "cardinality", "baseType"],
  },
  defaultValue: { children: "(value )+" },
  correctResponse: { children: "(value )+" },
  value: { children: "" },
  mapping: { children: "(mapEntry )+", attributes: ["defaultValue"] },
  mapEntry: { children: "", attributes: ["mapKey", "mappedValue"] },
  itemBody: { children: `${block}*` },
  choiceInteraction: {
    children: "(prompt )?(simpleChoice )+",
    attributes: ["responseIdentifier", "shuffle", "maxChoices"],
  },
  orderInteraction: {
    children: "(prompt )?(simpleChoice )+",
    attributes: ["responseIdentifier", "shuffle"],
  },
  matchInteraction: {
    children: "(prompt )?(simpleMatchSet ){2}",
    attributes: ["responseIdentifier", "shuffle", "maxAssociations"],
  },
  simpleChoice: { children: `(${flow})*`, attributes: ["identifier"] },
  simpleMatchSet: { children: "(simpleAssociableChoice )*" },
  simpleAssociableChoice: { children: `(${flow})*`, attributes: ["identifier", "matchMax"] },
  textEntryInteraction: { children: "", attributes: ["responseIdentifier"] },
  p: { children: "(img |textEntryInteraction )*" },
  img: { children: "", attributes: ["src", "alt"] },
  responseProcessing: { children: `(${rule})*` },
  responseCondition: { children: "responseIf (responseElseIf )*(responseElse )?" },
  responseIf: { children: `${expression}(${rule})*` },
  responseElseIf: { children: `${expression}(${rule})*` },
  responseElse: { children: `(${rule})*` },
  setOutcomeValue: { children: expression, attributes: ["identifier"] },
  variable: { children: "", attributes: ["identifier"] },
  correct: { children: "", attributes: ["identifier"] },
  mapResponse: { children: "", attributes: ["identifier"] },
  baseValue: { children: "", attributes: ["baseType"] },
  isNull: { children: expression },
  match: { children: `(${expression}){2}` },
  gte: { children: `(${expression}){2}` },
  lte: { children: `(${expression}){2}` },
  and: { children: `(${expression})+` },
  ordered: { children: `(${expression})*` },
  rubricBlock: { children: `(?:contentBody |(${flow})*)`, attributes: ["view"] },
  modalFeedback: {
    children: `(?:contentBody |(${flow})*)`,
    attributes: ["outcomeIdentifier", "identifier", "showHide"],
  },
  contentBody: { children: `(${flow})*` },
  assessmentTest: {
    children: "(outcomeDeclaration )*(testPart )+(outcomeProcessing )?",
    attributes: ["identifier", "title"],
  },
  outcomeProcessing: { children: `(${rule})*` },
  sum: { children: `(${expression})+` },
  testVariables: { children: "", attributes: ["variableIdentifier"] },
  testPart: {
    children: "(assessmentSection )+",
    attributes: ["identifier", "navigationMode", "submissionMode"],
  },
  assessmentSection: {
    children: "(rubricBlock )*(assessmentItemRef )*",
    attributes: ["identifier", "title", "visible"],
  },
  assessmentItemRef: { children: "", attributes: ["identifier", "href"] },
};

const parser = new XMLParser({ preserveOrder: true, ignoreAttributes: false, attributeNamePrefix: "" });

/** The name of version 2.1 for one of version 3.0. */
const camel = (name: string): string =>
  name.replace(/^qti-/, "").replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

type Node = Record<string, unknown> & { ":@"?: Record<string, string> };

function nameOf(node: Node): string {
  return Object.keys(node).find((key) => key !== ":@") ?? "";
}

/** What does not keep the rules in a tree. */
function faults(node: Node): string[] {
  const name = nameOf(node);
  if (name === "#text") return [];
  const own = camel(name);
  const children = (node[name] as Node[]).filter((child) => nameOf(child) !== "#text");
  const known = RULES[own];
  if (known === undefined) return [`${name} is no element that is known here`];
  const names = children.map((child) => `${camel(nameOf(child))} `).join("");
  const attributes = Object.keys(node[":@"] ?? {}).map(camel);
  return [
    ...(new RegExp(`^${known.children}$`).test(names) ? [] : [`${name} holds ${names}`]),
    ...(known.attributes ?? [])
      .filter((needed) => !attributes.includes(needed))
      .map((needed) => `${name} lacks ${needed}`),
    ...children.flatMap(faults),
  ];
}

describe.each(["3.0", "2.1"] as const)("the markup of version %s", (version: QtiVersion) => {
  it.each([true, false])("keeps the content model of the standard (keys: %s)", (keys) => {
    const files = [...packageFiles(items, { version, language: "en", title: "Colour", keys })];
    const documents = files.filter(({ path }) => /^(items\/.*|test)\.xml$/.test(path));
    expect(documents).toHaveLength(items.length + 1);
    for (const { path, content } of documents) {
      const [root] = (parser.parse(content) as Node[]).filter((node) => nameOf(node) !== "?xml");
      expect(faults(root as Node), path).toEqual([]);
    }
  });

  it("would be seen to break it", () => {
    const broken =
      '<assessmentItem identifier="a" title="t" adaptive="false"><itemBody/><outcomeDeclaration/></assessmentItem>';
    expect(faults((parser.parse(broken) as Node[])[0] as Node)).toEqual([
      "assessmentItem holds itemBody outcomeDeclaration ",
      "assessmentItem lacks timeDependent",
      "outcomeDeclaration lacks identifier",
      "outcomeDeclaration lacks cardinality",
      "outcomeDeclaration lacks baseType",
    ]);
  });
});

it("a package without keys holds nothing that a key could be told from", () => {
  for (const version of ["3.0", "2.1"] as const) {
    const files = [...packageFiles(items, { version, language: "en", title: "Colour", keys: false })];
    for (const { path, content } of files) {
      expect(content, path).not.toMatch(/correct-?response|processing|mapping|feedback|base-?value/i);
    }
  }
});
