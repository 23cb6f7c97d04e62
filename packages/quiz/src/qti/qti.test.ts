// Markup as the standards have it: 1EdTech QTI 3.0 and QTI 2.1 (ASI), IMS Content Packaging 1.1. Read with a general XML parser.
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { grade } from "../grade/grade.js";
import { ordersOf } from "../grade/order-score.js";
import { type Item, LEVELS } from "../item/item.js";
import { itemsFor } from "../paper/items-for.js";
import type { QtiVersion } from "./names.js";
import { packageZip } from "./package-zip.js";

const items = LEVELS.flatMap((level) =>
  itemsFor({ seed: "qti", level, count: 40, units: "metric", language: "en" }),
).map((item, i): Item => ({ ...item, id: `q${i + 1}` }));

function unpacked(version: QtiVersion): Map<string, string> {
  const chunks = [...packageZip(items, { version, language: "en", title: "Light & colour <1>", keys: true })];
  const files = unzipSync(Buffer.concat(chunks));
  return new Map(Object.entries(files).map(([path, bytes]) => [path, strFromU8(bytes)]));
}

/** Elements in order, as the parser gives them with `preserveOrder`. */
type Tree = { name: string; attributes: Record<string, string>; children: Tree[]; text: string };
const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  parseTagValue: false,
});
function tree(xml: string): Tree {
  const convert = (node: Record<string, unknown>): Tree => {
    const name = Object.keys(node).find((key) => key !== ":@") ?? "";
    const inner = name === "#text" ? [] : (node[name] as Record<string, unknown>[]);
    return {
      name,
      attributes: (node[":@"] ?? {}) as Record<string, string>,
      children: inner.filter((child) => !("#text" in child)).map(convert),
      text: inner.map((child) => ("#text" in child ? String(child["#text"]) : "")).join(""),
    };
  };
  const roots = (parser.parse(xml) as Record<string, unknown>[]).filter((node) => !("?xml" in node));
  expect(roots).toHaveLength(1);
  return convert(roots[0]!);
}
const all = (node: Tree, name: string): Tree[] => [
  ...(node.name === name ? [node] : []),
  ...node.children.flatMap((child) => all(child, name)),
];
const one = (node: Tree, name: string): Tree => {
  const found = all(node, name);
  expect(found, name).toHaveLength(1);
  return found[0]!;
};

const STANDARD = {
  "3.0": {
    item: "http://www.imsglobal.org/xsd/imsqtiasi_v3p0",
    manifest: "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1",
    itemType: "imsqti_item_xmlv3p0",
    prefix: "qti-",
  },
  "2.1": {
    item: "http://www.imsglobal.org/xsd/imsqti_v2p1",
    manifest: "http://www.imsglobal.org/xsd/imscp_v1p1",
    itemType: "imsqti_item_xmlv2p1",
    prefix: "",
  },
} as const;

describe.each(["3.0", "2.1"] as const)("a QTI %s package", (version) => {
  const files = unpacked(version);
  const standard = STANDARD[version];
  /** A name of version 2.1 in this version. */
  const q = (name: string): string =>
    version === "2.1" ? name : `qti-${name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;
  const a = (name: string): string =>
    version === "2.1" ? name : name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`);

  it("is well-formed XML in every file", () => {
    for (const [path, content] of files) expect(XMLValidator.validate(content), path).toBe(true);
  });

  it("has a manifest that lists every file and nothing else", () => {
    const manifest = tree(files.get("imsmanifest.xml")!);
    expect(manifest.name).toBe("manifest");
    expect(manifest.attributes["xmlns"]).toBe(standard.manifest);
    const listed = all(manifest, "file").map((file) => file.attributes["href"]);
    expect([...listed].sort()).toEqual([...files.keys()].filter((path) => path !== "imsmanifest.xml").sort());
    const resources = all(manifest, "resource");
    expect(resources.filter((r) => r.attributes["type"] === standard.itemType)).toHaveLength(items.length);
    const ids = new Set(resources.map((r) => r.attributes["identifier"]));
    expect(ids.size).toBe(resources.length);
    for (const dependency of all(manifest, "dependency"))
      expect(ids).toContain(dependency.attributes["identifierref"]);
  });

  // IEEE 1484.12.1, elements 1.3, 1.5 and 5.8; 1EdTech QTI metadata. The five words of difficulty are the standard's.
  it("says of each item what it is about, in what language and how hard, beside its file", () => {
    const manifest = tree(files.get("imsmanifest.xml")!);
    const words = ["very easy", "easy", "medium", "difficult", "very difficult"];
    const told = all(manifest, "resource").filter(({ attributes }) =>
      attributes["href"]?.startsWith("items/"),
    );
    expect(told).toHaveLength(items.length);
    told.forEach((resource, i) => {
      const { topic, level, difficulty, interaction } = items[i]!;
      const said = (name: string) => one(resource, name).text;
      expect(all(resource, "imsmd:string").map(({ text }) => text)).toEqual([topic, level]);
      expect(said("imsmd:language")).toBe("en");
      const place = words.indexOf(said("imsmd:value"));
      expect(difficulty).toBeGreaterThanOrEqual(place / 5 - 1e-9);
      expect(difficulty).toBeLessThanOrEqual((place + 1) / 5);
      const body = files.get(resource.attributes["href"]!)!;
      const element = said("imsqti:interactionType");
      const spelt =
        version === "2.1" ? element : `qti-${element.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;
      expect(body, interaction).toContain(`<${spelt}`);
    });
  });

  it("has a test whose references lead to the items", () => {
    const test = tree(files.get("test.xml")!);
    expect(test.attributes["title"]).toBe("Light & colour <1>");
    const refs = all(test, q("assessmentItemRef"));
    expect(refs).toHaveLength(items.length);
    for (const { attributes } of refs) {
      const item = tree(files.get(attributes["href"]!)!);
      expect(item.attributes["identifier"]).toBe(attributes["identifier"]);
    }
  });

  it("has items in the standard's namespace, with declared variables and identifiers of the allowed form", () => {
    for (const { id } of items) {
      const item = tree(files.get(`items/${id}.xml`)!);
      expect(item.name).toBe(q("assessmentItem"));
      expect(item.attributes["xmlns"]).toBe(standard.item);
      expect(item.attributes[a("timeDependent")]).toBe("false");
      expect(item.attributes["identifier"]).toMatch(/^[A-Za-z_][\w.-]*$/);
      const declared = new Set(
        [...all(item, q("responseDeclaration")), ...all(item, q("outcomeDeclaration"))].map(
          (d) => d.attributes["identifier"],
        ),
      );
      for (const use of [...all(item, q("variable")), ...all(item, q("setOutcomeValue"))]) {
        expect(declared).toContain(use.attributes["identifier"]);
      }
      const shown = new Set(all(item, q("modalFeedback")).map((f) => f.attributes["identifier"]));
      for (const set of all(item, q("setOutcomeValue"))) {
        const [value] = set.children;
        if (set.attributes["identifier"] === "FEEDBACK" && value?.name === q("baseValue"))
          expect(shown).toContain(value.text);
      }
    }
  });

  it("declares the key of each question, and leaves shuffling to the player", () => {
    for (const item of items) {
      const markup = tree(files.get(`items/${item.id}.xml`)!);
      const values = all(one(markup, q("correctResponse")), q("value")).map(({ text }) => text);
      switch (item.interaction) {
        case "single_choice":
        case "multiple_choice":
          expect(grade(item, { choices: values }).score).toBe(1);
          expect(one(markup, q("choiceInteraction")).attributes["shuffle"]).toBe("true");
          break;
        case "numeric":
          expect(grade(item, { number: Number(values[0]) }).score).toBe(1);
          break;
        case "ordering":
          expect(grade(item, { order: values }).score).toBe(1);
          expect(one(markup, q("orderInteraction")).attributes["shuffle"]).toBe("true");
          break;
        case "matching": {
          const pairs = values.map((pair) => {
            const [left = "", right = ""] = pair.split(" ");
            return { left, right };
          });
          expect(grade(item, { pairs }).score).toBe(1);
          break;
        }
      }
    }
  });

  it("gives numeric answers as an explicit interval", () => {
    for (const item of items) {
      if (item.interaction !== "numeric") continue;
      const markup = tree(files.get(`items/${item.id}.xml`)!);
      const bounds = (name: string) =>
        all(markup, q(name)).map((bound) => Number(one(bound, q("baseValue")).text));
      expect(bounds("gte")).toEqual([item.accepted.low, ...item.anticipated.map(({ low }) => low)]);
      expect(bounds("lte")).toEqual([item.accepted.high, ...item.anticipated.map(({ high }) => high)]);
      expect(all(markup, q("equal"))).toHaveLength(0);
    }
  });

  it("says no step of the solution twice in one piece of feedback", () => {
    for (const item of items) {
      const markup = tree(files.get(`items/${item.id}.xml`)!);
      for (const modal of all(markup, q("modalFeedback"))) {
        const said = all(modal, "p")
          .map(({ text }) => text)
          .join("\n");
        for (const step of item.solution.steps) expect(said.split(step).length - 1).toBeLessThan(2);
      }
    }
  });

  it("scores every order as the service does, those that are right in part among them", () => {
    for (const item of items) {
      if (item.interaction !== "ordering") continue;
      const markup = tree(files.get(`items/${item.id}.xml`)!);
      const scores = new Map<string, number>();
      for (const named of all(markup, q("responseElseIf"))) {
        const order = all(named, q("ordered")).flatMap((list) => all(list, q("baseValue")));
        const set = all(named, q("setOutcomeValue")).find((s) => s.attributes["identifier"] === "SCORE")!;
        const key = order.length > 0 ? order.map(({ text }) => text).join() : item.right_order.join();
        if (!scores.has(key)) scores.set(key, Number(one(set, q("baseValue")).text));
      }
      for (const order of ordersOf(item.right_order)) {
        expect(scores.get(order.join()) ?? 0).toBeCloseTo(grade(item, { order }).score, 5);
      }
    }
  });

  it("declares what can be had, and shows one feedback with the whole solution, a blank's without", () => {
    const outcomeOf = (root: Tree, name: string) =>
      all(root, q("outcomeDeclaration")).find(({ attributes }) => attributes["identifier"] === name)!;
    const test = tree(files.get("test.xml")!);
    expect(Number(one(outcomeOf(test, "MAXSCORE"), q("value")).text)).toBe(items.length);
    expect(Number(outcomeOf(test, "SCORE").attributes[a("normalMaximum")])).toBe(items.length);
    for (const item of items) {
      const markup = tree(files.get(`items/${item.id}.xml`)!);
      expect(one(outcomeOf(markup, "MAXSCORE"), q("value")).text).toBe("1");
      expect(outcomeOf(markup, "SCORE").attributes[a("normalMaximum")]).toBe("1");
      const shown = outcomeOf(markup, "FEEDBACK");
      expect(shown.attributes["cardinality"]).toBe("single");
      expect(one(shown, q("value")).text).toBe("none");
      const blank = one(markup, q("responseIf"));
      expect(all(blank, q("baseValue")).map(({ text }) => text)).toEqual(["0", "blank"]);
      for (const modal of all(markup, q("modalFeedback"))) {
        const said = all(modal, "p").map(({ text }) => text);
        if (modal.attributes["identifier"] === "blank") expect(said).toHaveLength(1);
        else expect(said).toEqual(expect.arrayContaining(item.solution.steps));
      }
    }
  });

  it("carries pictures with their text alternatives", () => {
    const withPicture = items.filter(({ picture }) => picture);
    expect(withPicture.length).toBeGreaterThan(3);
    for (const { id, picture } of withPicture) {
      const image = one(tree(files.get(`items/${id}.xml`)!), "img");
      expect(image.attributes["alt"]).toBe(picture!.alt);
      expect(image.attributes["src"]).toBe(`../assets/${id}.svg`);
      const svg = tree(files.get(`assets/${id}.svg`)!);
      expect(svg.attributes["xmlns"]).toBe("http://www.w3.org/2000/svg");
      expect(one(svg, "desc").text).toBe(picture!.alt);
    }
  });
});

it("a package is the same to the byte when made again", () => {
  const bytes = () =>
    Buffer.concat([
      ...packageZip(items.slice(0, 5), { version: "3.0", language: "en", title: "t", keys: true }),
    ]);
  expect(bytes().equals(bytes())).toBe(true);
});
