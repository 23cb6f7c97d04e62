import { problemCodes } from "@sunfathom/contract";
import { problemPage } from "@sunfathom/words";
import { describe, expect, it } from "vitest";
import { escapeHtml, inline } from "./html.js";
import { problemHtml } from "./problem.js";

const textOf = (code: (typeof problemCodes)[number]) => problemHtml(problemPage(code)).bytes.toString("utf8");

describe("the page of a problem, for people", () => {
  it.each(problemCodes)("says of %s what its data say", (code) => {
    const { title, explanation, errors = [] } = problemPage(code);
    const html = textOf(code);
    for (const text of [title, explanation, ...errors.map(({ meaning }) => meaning)])
      expect(html).toContain(inline(text));
    expect(html).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
    expect(html).toContain('name="viewport"');
  });

  it("needs neither script nor style of its own, which its policy would refuse", () => {
    for (const code of problemCodes) expect(textOf(code)).not.toMatch(/<script|<style| style=| on\w+=/i);
  });

  // https://html.spec.whatwg.org/multipage/syntax.html: what ends a text, or an attribute's value.
  it("makes no markup of what a text says", () => {
    const hostile = `</td><script>alert("1")</script>&<img src=x onerror='a'>`;
    const html = problemHtml({
      type: "/problems/invalid-scene",
      code: hostile,
      title: hostile,
      status: 400,
      explanation: `\`${hostile}\``,
      errors: [{ code: hostile, meaning: hostile }],
    }).bytes.toString("utf8");
    expect(html).not.toContain("<script");
    expect(html).not.toContain("<img");
    expect(html).toContain(`<code>${escapeHtml(hostile)}</code>`);
    expect(escapeHtml(`"'<>&`)).toBe("&quot;&#39;&lt;&gt;&amp;");
  });
});
