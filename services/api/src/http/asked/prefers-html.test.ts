import { describe, expect, it } from "vitest";
import { prefersHtml } from "./prefers-html.js";

// RFC 9110, section 12.5.1.
describe("an Accept header", () => {
  it.each([
    // What browsers send with a link that is followed: https://developer.mozilla.org/docs/Web/HTTP/Guides/Content_negotiation/List_of_default_Accept_values
    ["text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8", true],
    ["text/html", true],
    ["Text/HTML; charset=utf-8", true],
    ["text/html, application/json;q=0.9", true],
    ["text/html;q=0.9, application/json", false],
    ["text/html, application/json", false],
    ["text/html;q=0, */*", false],
    ["application/json", false],
    ["*/*", false],
    ["text/*", false],
    ["", false],
    [undefined, false],
  ])("of %j asks for a page: %s", (accept, page) => expect(prefersHtml(accept)).toBe(page));
});
