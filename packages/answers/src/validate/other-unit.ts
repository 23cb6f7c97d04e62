import { nearest } from "./nearest.js";

interface Unit {
  /** Its symbol. */
  symbol: string;
  /** What it measures, and how many of that quantity's basic unit it is. */
  of: "length" | "speed" | "time";
  times: number;
}

/** Units by how names end: those that people send, and those that fields are in. */
const units: Readonly<Record<string, Unit>> = named([
  ["ft feet foot", { symbol: "ft", of: "length", times: 0.3048 }],
  ["yd yard yards", { symbol: "yd", of: "length", times: 0.9144 }],
  ["in inch inches", { symbol: "in", of: "length", times: 0.0254 }],
  ["m metre metres meter meters", { symbol: "m", of: "length", times: 1 }],
  ["cm", { symbol: "cm", of: "length", times: 0.01 }],
  ["mm", { symbol: "mm", of: "length", times: 0.001 }],
  ["kn kt kts knot knots", { symbol: "kn", of: "speed", times: 1852 / 3600 }],
  ["km_h kmh kph", { symbol: "km/h", of: "speed", times: 1 / 3.6 }],
  ["mph", { symbol: "mph", of: "speed", times: 0.44704 }],
  ["m_s", { symbol: "m/s", of: "speed", times: 1 }],
  ["s", { symbol: "s", of: "time", times: 1 }],
  ["ms", { symbol: "ms", of: "time", times: 0.001 }],
]);

function named(rows: readonly (readonly [endings: string, unit: Unit])[]): Record<string, Unit> {
  return Object.fromEntries(rows.flatMap(([endings, unit]) => endings.split(" ").map((end) => [end, unit])));
}

/** A field that was sent in another unit than it is taken in. */
export interface OtherUnit {
  /** The field that takes it. */
  field: string;
  /** What was sent, or 1 where that was no number. */
  value: number;
  from_unit: string;
  to_unit: string;
  /** The same in the field's unit, to three figures. */
  converted: number;
}

/** What `name`, which is none of `names`, would be in the unit of the field that it stands for; undefined where it is none. */
export function otherUnit(name: string, value: unknown, names: readonly string[]): OtherUnit | undefined {
  const sent = split(name.replace(/([a-z])([A-Z])/g, "$1_$2").toLowerCase());
  if (sent === undefined) return undefined;
  const fields = names.flatMap((field) => {
    const taken = split(field);
    return taken !== undefined && taken.unit.of === sent.unit.of ? [{ field, ...taken }] : [];
  });
  const near = nearest(
    sent.stem,
    fields.map(({ field }) => field),
  );
  const meant = fields.find(({ stem }) => stem === sent.stem) ?? fields.find(({ field }) => field === near);
  if (meant === undefined || meant.unit === sent.unit) return undefined;
  const number = numberOf(value) ?? 1;
  const converted = (number * sent.unit.times) / meant.unit.times;
  return {
    field: meant.field,
    value: number,
    from_unit: sent.unit.symbol,
    to_unit: meant.unit.symbol,
    converted: Number(converted.toPrecision(3)),
  };
}

/** A name without the unit that it ends in, the longest that there is. */
function split(name: string): { stem: string; unit: Unit } | undefined {
  const words = name.split("_");
  for (const length of [2, 1]) {
    const ending = words.slice(-length).join("_");
    const stem = words.slice(0, -length).join("_");
    const unit = Object.hasOwn(units, ending) ? units[ending] : undefined;
    if (unit !== undefined && stem !== "") return { stem, unit };
  }
  return undefined;
}

/** A query string has numbers as text. */
function numberOf(value: unknown): number | undefined {
  if (typeof value === "string" && value.trim() === "") return undefined;
  const number = typeof value === "string" || typeof value === "number" ? Number(value) : Number.NaN;
  return Number.isFinite(number) ? number : undefined;
}
