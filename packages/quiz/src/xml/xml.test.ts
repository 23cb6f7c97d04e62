import fc from "fast-check";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { expect, it } from "vitest";
import { el, text, xml } from "./xml.js";

it("any text and attribute comes back from a general parser as it went in", () => {
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "",
    trimValues: false,
    parseTagValue: false,
    parseAttributeValue: false,
  });
  // Line ends and tabs in attributes are normalised by every XML reader (XML 1.0, 3.3.3): not used here.
  const plain = fc.string({ unit: fc.constantFrom(..."a<>&\"'é–☃𝄞 %;]"), minLength: 1 });
  fc.assert(
    fc.property(plain, plain, (content, attribute) => {
      const document = xml(el("root", { a: attribute }, text(content)));
      expect(XMLValidator.validate(document)).toBe(true);
      const { root } = parser.parse(document) as { root: { "#text": string; a: string } };
      expect(root["#text"]).toBe(content);
      expect(root.a).toBe(attribute);
    }),
    { seed: 7, numRuns: 300 },
  );
});

it("what XML cannot carry is replaced, not passed on", () => {
  expect(xml(el("p", {}, text("a\u0000\u0008\ud800b")))).toContain("<p>a\ufffd\ufffd\ufffdb</p>");
});
