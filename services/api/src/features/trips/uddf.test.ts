// Files as "UDDF - the Universal Dive Data Format", version 3.2.1, describes them (streit.cc/extern/uddf_v321/en: the elements uddf,
// profiledata, repetitiongroup, dive, informationbeforedive, datetime, samples, waypoint, depth in metres, divetime in seconds).
import { mostDiveSamples } from "@sunfathom/contract";
import { describe, expect, it } from "vitest";
import { readUddf } from "./uddf.js";

const waypoint = (depth: string | number, divetime: string | number, more = ""): string =>
  `<waypoint>${more}<depth>${depth}</depth><divetime>${divetime}</divetime></waypoint>`;
const dive = (waypoints: string, id = "dive_7", before = "<datetime>2027-01-16T09:30:05+09:00</datetime>") =>
  `<dive id="${id}"><informationbeforedive>${before}</informationbeforedive><samples>${waypoints}</samples><informationafterdive><greatestdepth>18.2</greatestdepth></informationafterdive></dive>`;
const file = (
  dives: string,
  { head = "", root = 'version="3.2.1" xmlns="http://www.streit.cc/uddf/3.2/"', after = "" } = {},
) =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${head}<uddf ${root}>
  <!-- the generator has to stand in every file -->
  <generator><name>own log</name><type>logbook</type><version>1.0</version></generator>
  <gasdefinitions><mix id="air"><name>air</name><o2>0.21</o2></mix></gasdefinitions>
  <profiledata><repetitiongroup id="group_1">${dives}</repetitiongroup></profiledata>${after}
</uddf>\n`;
const three =
  waypoint("0.0", 0) +
  waypoint(" 18.2 ", "180.5", "<temperature>297.1</temperature>") +
  waypoint("5e0", 2400);
const refusal = (text: string, wanted?: string) => {
  const read = readUddf(text, wanted);
  if (read.status !== "refused") throw new Error("It was read.");
  const { code, parameters } = read.finding;
  return { code, ...parameters };
};

describe("a file in UDDF 3.2", () => {
  it("gives its waypoints, and the time of day at which the dive began", () => {
    expect(readUddf(file(dive(three)), undefined)).toEqual({
      status: "read",
      samples: [
        { time_s: 0, depth_m: 0 },
        { time_s: 180.5, depth_m: 18.2 },
        { time_s: 2400, depth_m: 5 },
      ],
      start_clock: "09:30:05",
    });
  });

  it("may lack a time, a namespace, or an order of depth and divetime; switches and alarms of a moment are passed over", () => {
    const moment =
      waypoint(12, 60) +
      waypoint(12, 60, '<switchmix ref="air"/>') +
      waypoint(12, 60, "<alarm>ascent</alarm>");
    const other = "<waypoint><divetime>90</divetime><depth><![CDATA[11]]></depth></waypoint>";
    const read = readUddf(file(dive(moment + other, "a", ""), { root: 'version="3.2.3"' }), undefined);
    expect(read).toEqual({
      status: "read",
      samples: [
        { time_s: 60, depth_m: 12 },
        { time_s: 90, depth_m: 11 },
      ],
    });
  });

  it("gives the dive that is asked for, where it has several", () => {
    const two = file(dive(three, "first") + dive(waypoint(1, 0) + waypoint(2, 9), "second"));
    expect(readUddf(two, "second")).toMatchObject({ samples: [{ depth_m: 1 }, { depth_m: 2 }] });
    expect(refusal(two)).toMatchObject({
      code: "uddf_element",
      case: "which_dive",
      dives: ["first", "second"],
    });
    expect(refusal(two, "third")).toMatchObject({ case: "no_such_dive", dives: ["first", "second"] });
  });

  it("is not read by what elements of other formats in it are called", () => {
    const foreign = `<x:waypoint xmlns:x="urn:other"><x:depth>9</x:depth><x:divetime>1</x:divetime></x:waypoint>`;
    expect(refusal(file(dive(foreign)))).toMatchObject({ case: "no_samples" });
    expect(readUddf(file(dive(foreign + three)), undefined)).toMatchObject({ samples: { length: 3 } });
  });
});

describe("what could do harm is refused", () => {
  const laughs = `<!DOCTYPE uddf [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;">]>\n`;
  it.each([
    ["entities that grow", file(dive(waypoint("&c;", 0)), { head: laughs }), "uddf_harmful"],
    [
      "a file of the machine",
      file(dive(three), { head: '<!DOCTYPE uddf SYSTEM "file:///etc/passwd">\n' }),
      "uddf_harmful",
    ],
    ["a document type alone", file(dive(three), { head: "<!DOCTYPE uddf>" }), "uddf_harmful"],
    ["an entity that nobody declared", file(dive(waypoint("&depth;", 0))), "uddf_not_well_formed"],
    ["a parameter entity outside", file(dive(three), { after: "%x;<a" }), "uddf_not_well_formed"],
    ["elements without end", file(`${"<a>".repeat(40)}`), "uddf_harmful"],
    ["a file that is cut", file(dive(three)).slice(0, 700), "uddf_not_well_formed"],
    ["two roots", `${file(dive(three))}<uddf/>`, "uddf_not_well_formed"],
    ["no XML", "dive;depth\n0;3", "uddf_not_well_formed"],
    ["a character that XML does not have", file(dive(waypoint("&#0;", 0))), "uddf_not_well_formed"],
  ])("%s", (_, text, code) => {
    expect(refusal(text).code).toBe(code);
  });

  it("elements a hundred thousand deep, and more waypoints than are taken, before all of them are read", () => {
    expect(refusal(`<uddf version="3.2">${"<a>".repeat(300_000)}`)).toMatchObject({
      case: "too_deep",
      most: 32,
    });
    const many = Array.from({ length: mostDiveSamples + 1 }, (_, i) => waypoint(9, i)).join("");
    expect(refusal(file(dive(many)))).toMatchObject({ case: "too_many_samples", most: mostDiveSamples });
  });
});

describe("what is wrong is named by its element", () => {
  const path = "uddf/profiledata/repetitiongroup/dive/samples/waypoint";
  it.each<[string, string, object]>([
    ["another root", "<divelog/>", { code: "uddf_element", case: "root", path: "divelog" }],
    [
      "another version",
      file(dive(three), { root: 'version="2.2.0"' }),
      { case: "version", path: "uddf/@version" },
    ],
    ["no version", file(dive(three), { root: "" }), { case: "version" }],
    ["another namespace", file(dive(three), { root: 'version="3.2" xmlns="urn:other"' }), { case: "root" }],
    ["no dive", file(""), { case: "no_dive" }],
    ["one waypoint", file(dive(waypoint(3, 0))), { case: "no_samples", path }],
    [
      "no depth",
      file(dive("<waypoint><divetime>1</divetime></waypoint>")),
      { case: "missing", path: `${path}[1]/depth` },
    ],
    [
      "a depth in words",
      file(dive(waypoint(1, 0) + waypoint("deep", 9))),
      { case: "not_a_number", path: `${path}[2]/depth`, value: "deep" },
    ],
    ["a depth without end", file(dive(waypoint("Infinity", 0))), { case: "not_a_number", value: "Infinity" }],
    [
      "a depth above water",
      file(dive(waypoint("-0.2", 0))),
      { case: "out_of_range", value: "-0.2", bound: 100 },
    ],
    ["a very long number", file(dive(waypoint("1".repeat(500), 0))), { case: "out_of_range" }],
    [
      "a dive that goes back in time",
      file(dive(waypoint(1, 10) + waypoint(2, 9))),
      { case: "order", path: `${path}[2]/divetime`, bound: 10 },
    ],
    ["two depths at one time", file(dive(waypoint(1, 10) + waypoint(2, 10))), { case: "order" }],
  ])("%s", (_, text, expected) => {
    expect(refusal(text)).toMatchObject(expected);
  });
});
