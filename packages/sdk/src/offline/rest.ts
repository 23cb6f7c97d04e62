export type Made = (...given: never[]) => unknown;

/** What only some scenes need, by name: functions, and catalogues of functions. */
export type Seldom = Readonly<Record<string, Made | Readonly<Record<string, Made>>>>;

/** All of it. Here it stays where it is called: the packer puts it in this place (`scripts/pack/seldom.mjs`). */
export const made: Seldom = {};
