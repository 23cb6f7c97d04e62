import { describe, expect, it } from "vitest";
import { causes } from "./causes.js";
import { mountingCauses } from "./mounting-causes.js";

const said = Object.entries({ ...causes, ...mountingCauses }).map(([code, text]) => ({
  code,
  ...text({ known_by: "attenuation" }),
}));

describe("a cause of doubt", () => {
  it.each(said)("$code is told, and what would shrink it", ({ text, how_to_shrink }) => {
    // Part of a sentence of the reader's, without its end.
    expect(text).toMatch(/^[A-Z].*[^.]$/);
    expect(how_to_shrink).toMatch(/^[A-Z].*\.$/);
  });

  it("of scattering is another where visibility was seen", () => {
    const [told, seen] = (["attenuation", "sight"] as const).map((known_by) =>
      causes.water_scattering({ known_by }),
    );
    expect(told.text).not.toBe(seen.text);
    expect(told.how_to_shrink).not.toBe(seen.how_to_shrink);
  });
});
