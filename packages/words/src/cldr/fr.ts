// Written by scripts/write-cldr.mjs from CLDR 48.2.0: © 1991-2025 Unicode, Inc., Unicode License V3.
import type { Cldr } from "./table.js";

export const fr: Cldr = {
  decimal: ",",
  group: "\u202f",
  minimumGrouping: 1,
  percent: "{0}\u00a0%",
  and: {
    start: "{0}, {1}",
    middle: "{0}, {1}",
    end: "{0} et {1}",
    two: "{0} et {1}",
  },
  or: {
    start: "{0}, {1}",
    middle: "{0}, {1}",
    end: "{0} ou {1}",
    two: "{0} ou {1}",
  },
  units: {
    m: "{0}\u202fm",
    cm: "{0}\u202fcm",
    mm: "{0}\u202fmm",
    ft: "{0}\u202fpi",
    in: "{0}\u202fpo",
  },
  plural: ({ i }) => (i === 0 || i === 1 ? "one" : "other"),
};
