import { XMLParser } from "fast-xml-parser";
import { widthOf } from "./text/measure.js";

/** A text of a picture, and the box that it takes. */
interface Box {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
  size: number;
  fill: string;
}

export interface Drawn {
  width: number;
  height: number;
  title: string;
  description: string;
  boxes: Box[];
}

interface Node {
  ":@"?: Record<string, string>;
  "#text"?: string;
  [name: string]: unknown;
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  trimValues: false,
  parseTagValue: false,
});

/** Reads a picture the way a renderer does: attributes of groups hold for what is in them. @throws where it is no XML */
export function readPicture(svg: string): Drawn {
  const [root] = parser.parse(svg) as Node[];
  const { width, height } = root?.[":@"] ?? {};
  const boxes: Box[] = [];
  let [title, description] = ["", ""];
  const textOf = (nodes: Node[]) => nodes.map((node) => node["#text"] ?? "").join("");
  const walk = (nodes: Node[], inherited: Record<string, string>): void => {
    for (const node of nodes) {
      const attributes = { ...inherited, ...node[":@"] };
      const [name] = Object.keys(node).filter((key) => key !== ":@");
      const children = node[name ?? ""];
      if (!Array.isArray(children)) continue;
      if (name === "title") title = textOf(children);
      else if (name === "desc") description = textOf(children);
      else if (name === "text") boxes.push(boxOf(textOf(children), attributes));
      else walk(children, attributes);
    }
  };
  walk([root ?? {}], {});
  return { width: Number(width), height: Number(height), title, description, boxes };
}

function boxOf(text: string, attributes: Record<string, string>): Box {
  const size = Number(attributes["font-size"]);
  const width = widthOf(text, size, attributes["font-weight"] === "600" ? "semibold" : "regular");
  const anchor = attributes["text-anchor"] ?? "start";
  const left = Number(attributes["x"]) - (anchor === "end" ? width : anchor === "middle" ? width / 2 : 0);
  const base = Number(attributes["y"]);
  const fill = attributes["fill"] ?? "#000000";
  // Ascenders and descenders of Latin letters, in shares of an em.
  return { text, left, right: left + width, top: base - 0.74 * size, bottom: base + 0.2 * size, size, fill };
}

/** Pairs of texts that meet. */
export const meeting = ({ boxes }: Drawn): string[] =>
  boxes.flatMap((one, i) =>
    boxes
      .slice(i + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `${one.text} / ${other.text}`),
  );

/** Texts that leave the page. */
export const outside = ({ boxes, width, height }: Drawn): string[] =>
  boxes
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => text);
