import { en, trips } from "@sunfathom/words/en";

const keysOf = (...catalogues: readonly object[]): string[] => [
  ...new Set(catalogues.flatMap((catalogue) => Object.keys(catalogue))),
];

const every = Object.values(en);
/** Lines of plans, labels and captions are no reasons. */
const { trip_plan: _plan, trip_says: _says, timeline_cues: _cues, ...tripReasons } = trips;

/** The codes that there are today, by the component and the field that they stand in: each has a text in every language. */
export const saidCodes: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  Reason: { code: keysOf(...every.map(({ reasons }) => reasons), ...Object.values(tripReasons)) },
  Caution: { code: keysOf(...every.map(({ cautions }) => cautions)) },
  UncertaintyCause: { cause: keysOf(...every.map(({ causes }) => causes)) },
  WayToPay: { code: keysOf(en["exposure-loss"].ways) },
  WayOut: { code: keysOf(en["mixed-light"].ways) },
  MountOption: { code: keysOf(en["filter-mounting"].reasons) },
  DiveStep: { code: keysOf(en["dive-advice"].steps) },
  TakeItem: { code: keysOf(en["dive-advice"].take) },
  CloseCall: { code: keysOf(en["dive-advice"].summary).filter((code) => code.startsWith("close_")) },
  Statement: {
    code: keysOf(en["white-balance"].procedure, en["filter-mounting"].procedure, en["dive-advice"].summary),
  },
};
