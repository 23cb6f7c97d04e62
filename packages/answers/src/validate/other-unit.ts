import { nearest } from "./nearest.js";

interface Unit {
  /** Its symbol. */
  symbol: string;
  /** What it measures, and how many of that quantity's basic unit it is. */
  of: "length" | "speed" | "time";
  times: number;
}

/** Units by how names end, those that people send and those that fields are in: what each measures, and how much of it. */
const units = new Map<string, Unit>(
  (
    [
      ["ft", "length", 0.3048, "feet foot"],
      ["yd", "length", 0.9144, "yard yards"],
      ["in", "length", 0.0254, "inch inches"],
      ["m", "length", 1, "metres meters"],
      ["cm", "length", 0.01],
      ["mm", "length", 0.001],
      ["kn", "speed", 1852 / 3600, "kt kts knots"],
      ["km/h", "speed", 1 / 3.6, "km_h kmh"],
      ["mph", "speed", 0.44704],
      ["m/s", "speed", 1, "m_s"],
      ["s", "time", 1],
      ["ms", "time", 0.001],
    ] as const
  ).flatMap(([symbol, of, times, endings = ""]) =>
    [symbol, ...endings.split(" ")].map((end) => [end, { symbol, of, times }] as const),
  ),
);

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
    const taken = splitOnce(field);
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

/** Fields that there are, each taken apart once: they are the contract's, and few. */
const fieldsSplit = new Map<string, Split | undefined>();

function splitOnce(field: string): Split | undefined {
  if (!fieldsSplit.has(field)) fieldsSplit.set(field, split(field));
  return fieldsSplit.get(field);
}

interface Split {
  stem: string;
  unit: Unit;
}

/** A name without the unit that it ends in, the longest that there is. */
function split(name: string): Split | undefined {
  const words = name.split("_");
  for (const length of [2, 1]) {
    const ending = words.slice(-length).join("_");
    const stem = words.slice(0, -length).join("_");
    const unit = units.get(ending);
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
