/**
 * A dive's depth over time out of a file in UDDF 3.2, the Universal Dive Data Format (streit.cc/extern/uddf_v321): of it the waypoints
 * alone are read, `depth` in metres and `divetime` in seconds, between which depth changes linearly, and the `datetime` at which the
 * dive began. The reader goes through the file once and keeps nothing else. What a file could do harm with is refused: a document type
 * declaration, and with it every entity of its own, elements in elements without end, and more waypoints than are taken.
 */
import { checkpoint, type UddfFinding, type UddfRead } from "@sunfathom/answers";
import { longestDive_s, mostDiveSamples } from "@sunfathom/contract";
import { SaxesParser, type SaxesTagNS } from "saxes";

const NAMESPACES = ["http://www.streit.cc/uddf/3.2/", ""];
const DEEPEST_ELEMENT = 32;
const LONGEST_VALUE = 64;
const DEEPEST_M = 100;
/** So many take a millisecond or two at the most. */
const CHARACTERS_PER_LOOK = 16 * 1024;

/** Where a dive's waypoints stand. */
const DIVE = "uddf/profiledata/repetitiongroup/dive";
const WAYPOINT = `${DIVE}/samples/waypoint`;
const DATETIME = `${DIVE}/informationbeforedive/datetime`;
const READ: ReadonlySet<string> = new Set([`${WAYPOINT}/depth`, `${WAYPOINT}/divetime`, DATETIME]);

interface Sample {
  time_s: number;
  depth_m: number;
}

interface Dive {
  id: string;
  samples: Sample[];
  datetime: string | undefined;
}

class Refused extends Error {
  constructor(readonly finding: UddfFinding) {
    super(finding.code);
  }
}

/** @param wanted id of the dive, for a file that has several */
export function readUddf(text: string, wanted: string | undefined): UddfRead {
  try {
    return { status: "read", ...dive(new Reader(wanted).read(text), wanted) };
  } catch (error) {
    if (error instanceof Refused) return { status: "refused", finding: error.finding };
    throw error;
  }
}

/** The dive that is wanted, or the only one that there is. */
function dive(
  dives: readonly Dive[],
  wanted: string | undefined,
): { samples: Sample[]; start_clock?: string } {
  const found = wanted === undefined ? dives : dives.filter(({ id }) => id === wanted);
  const [one, other] = found;
  const ids = dives.slice(0, 8).map(({ id }) => id.slice(0, LONGEST_VALUE));
  if (one === undefined)
    throw element(wanted === undefined || dives.length === 0 ? "no_dive" : "no_such_dive", DIVE, ids);
  if (other !== undefined) throw element("which_dive", DIVE, ids);
  if (one.samples.length < 2) throw element("no_samples", WAYPOINT, ids);
  const clock = /T(\d\d:\d\d:\d\d)/.exec(one.datetime ?? "")?.[1];
  return { samples: one.samples, ...(clock === undefined ? {} : { start_clock: clock }) };
}

type ElementCase = Extract<UddfFinding, { code: "uddf_element" }>["parameters"]["case"];

const element = (what: ElementCase, path: string, dives: string[] = []): Refused =>
  new Refused({ code: "uddf_element", parameters: { case: what, path, dives } });

/** A number as XML Schema writes a decimal or a double; no infinity, and no NaN. */
const numberPattern = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,3})?$/;

class Reader {
  readonly #parser = new SaxesParser({ xmlns: true });
  readonly #path: string[] = [];
  readonly #dives: Dive[] = [];
  readonly #wanted: string | undefined;
  #values = new Map<string, string>();
  #text: string | undefined;
  #waypoints = 0;
  #line = 0;

  constructor(wanted: string | undefined) {
    this.#wanted = wanted;
    const parser = this.#parser;
    parser.on("error", () => {
      const { line, column } = parser;
      throw new Refused({ code: "uddf_not_well_formed", parameters: { line, column } });
    });
    parser.on("doctype", () => {
      throw this.#harmful("doctype", 0);
    });
    parser.on("opentag", (tag) => this.#open(tag));
    parser.on("closetag", () => this.#close());
    parser.on("text", (text) => this.#add(text));
    parser.on("cdata", (text) => this.#add(text));
  }

  read(text: string): readonly Dive[] {
    for (let at = 0; at < text.length; at += CHARACTERS_PER_LOOK) {
      checkpoint();
      this.#parser.write(text.slice(at, at + CHARACTERS_PER_LOOK));
    }
    this.#parser.close();
    return this.#dives;
  }

  #harmful(what: "doctype" | "too_deep" | "too_many_samples", most: number): Refused {
    return new Refused({ code: "uddf_harmful", parameters: { case: what, line: this.#parser.line, most } });
  }

  #open({ local, uri, attributes }: SaxesTagNS): void {
    const isOurs = NAMESPACES.includes(uri);
    // What is of another namespace has a name that no path has.
    this.#path.push(isOurs ? local : `${local}?`);
    const path = this.#path.join("/");
    if (this.#path.length > DEEPEST_ELEMENT) throw this.#harmful("too_deep", DEEPEST_ELEMENT);
    if (this.#path.length === 1) {
      if (path !== "uddf") throw element("root", local.slice(0, LONGEST_VALUE));
      if (!/^3\.2(\.|$)/.test(attributes["version"]?.value ?? "")) throw element("version", "uddf/@version");
    }
    if (path === DIVE) {
      this.#dives.push({ id: attributes["id"]?.value ?? "", samples: [], datetime: undefined });
      this.#waypoints = 0;
    }
    if (path === WAYPOINT) {
      this.#values = new Map();
      this.#line = this.#parser.line;
    }
    this.#text = READ.has(path) ? "" : undefined;
  }

  #add(text: string): void {
    if (this.#text === undefined) return;
    // One more than may be, so that what is cut is no number.
    this.#text = (this.#text + text).slice(0, LONGEST_VALUE + 1);
  }

  #close(): void {
    const path = this.#path.join("/");
    if (this.#text !== undefined) {
      const value = this.#text.trim();
      const one = this.#dives.at(-1);
      if (path === DATETIME && one) one.datetime = value;
      else this.#values.set(this.#path.at(-1) ?? "", value);
    }
    this.#text = undefined;
    if (path === WAYPOINT) this.#waypoint();
    this.#path.pop();
  }

  #waypoint(): void {
    const one = this.#dives.at(-1);
    if (one === undefined || (this.#wanted !== undefined && one.id !== this.#wanted)) return;
    this.#waypoints += 1;
    if (this.#waypoints > mostDiveSamples) throw this.#harmful("too_many_samples", mostDiveSamples);
    const time_s = this.#number("divetime", longestDive_s);
    const depth_m = this.#number("depth", DEEPEST_M);
    const before = one.samples.at(-1);
    if (before === undefined || time_s > before.time_s) one.samples.push({ time_s, depth_m });
    // Of one moment several waypoints may tell, each of something else.
    else if (time_s < before.time_s || depth_m !== before.depth_m)
      throw this.#value("order", "divetime", before.time_s);
  }

  #number(name: "divetime" | "depth", most: number): number {
    const text = this.#values.get(name);
    if (text === undefined) throw this.#value("missing", name, most);
    if (!numberPattern.test(text)) throw this.#value("not_a_number", name, most);
    const value = Number(text);
    if (value < 0 || value > most) throw this.#value("out_of_range", name, most);
    return value;
  }

  #value(
    what: "missing" | "not_a_number" | "out_of_range" | "order",
    name: "divetime" | "depth",
    bound: number,
  ): Refused {
    const parameters = {
      case: what,
      path: `${WAYPOINT}[${this.#waypoints}]/${name}`,
      line: this.#line,
      value: (this.#values.get(name) ?? "").slice(0, LONGEST_VALUE),
      bound,
    };
    return new Refused({ code: "uddf_value", parameters });
  }
}
