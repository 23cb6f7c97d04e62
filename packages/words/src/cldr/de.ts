// Written by scripts/write-cldr.mjs from CLDR 48.2.0: © 1991-2025 Unicode, Inc., Unicode License V3.
import type { Cldr } from "./table.js";

export const de: Cldr = {
  decimal: ",",
  group: ".",
  minimumGrouping: 1,
  percent: "{0}\u00a0%",
  and: {
    start: "{0}, {1}",
    middle: "{0}, {1}",
    end: "{0} und {1}",
    two: "{0} und {1}",
  },
  or: {
    start: "{0}, {1}",
    middle: "{0}, {1}",
    end: "{0} oder {1}",
    two: "{0} oder {1}",
  },
  units: {
    m: "{0} m",
    cm: "{0} cm",
    mm: "{0} mm",
    ft: "{0} ft",
    in: "{0} in",
  },
  plural: ({ i, v }) => (i === 1 && v === 0 ? "one" : "other"),
};
