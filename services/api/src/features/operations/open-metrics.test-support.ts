// Reads the text format of OpenMetrics 1.0 strictly, as its ABNF and the rules on families say:
// https://github.com/prometheus/OpenMetrics/blob/v1.0.0/specification/OpenMetrics.md#text-format

export interface Family {
  type: string;
  samples: { name: string; labels: Record<string, string>; value: number }[];
}

/** What may stand behind a family's name in its samples. */
const suffixes: Readonly<Record<string, readonly string[]>> = {
  counter: ["_total", "_created"],
  gauge: [""],
  histogram: ["_bucket", "_count", "_sum", "_created"],
};

const number = /^(?:[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?|[+-]?inf(?:inity)?|nan)$/i;
const sample = /^([a-zA-Z_:][a-zA-Z0-9_:]*)(?:\{(.*)\})? (\S+)$/;
const label = /([a-zA-Z_][a-zA-Z0-9_]*)="((?:[^"\\\n]|\\[n"\\])*)"(?:,|$)/y;

/** @throws Error that quotes the line which keeps no rule */
export function readOpenMetrics(text: string): Map<string, Family> {
  const lines = text.split("\n");
  if (lines.pop() !== "" || lines.pop() !== "# EOF") throw new Error("The end is not # EOF and a line end.");
  const families = new Map<string, Family>();
  let current = "";
  for (const line of lines) {
    const [, keyword = "", name = "", rest = ""] = /^# (HELP|TYPE|UNIT) (\S+) (.*)$/.exec(line) ?? [];
    if (keyword !== "") {
      if (name !== current && families.has(name)) throw new Error(`The family comes twice: ${line}`);
      current = name;
      const family = families.get(name) ?? { type: "unknown", samples: [] };
      families.set(name, family);
      if (family.samples.length > 0) throw new Error(`Said of a family after its samples: ${line}`);
      if (keyword === "TYPE") family.type = rest;
      continue;
    }
    const family = families.get(current);
    if (family === undefined) throw new Error(`Of no family: ${line}`);
    family.samples.push(sampleOf(line, current, family.type));
  }
  return families;
}

function sampleOf(line: string, family: string, type: string): Family["samples"][number] {
  const [, name, labels = "", value = ""] = sample.exec(line) ?? [];
  if (name === undefined || !number.test(value)) throw new Error(`No sample: ${line}`);
  if (!suffixes[type]?.some((suffix) => name === family + suffix))
    throw new Error(`No sample of the ${type} ${family}: ${line}`);
  return {
    name,
    labels: labelsOf(labels, line),
    value: Number(value.replace(/inf.*$/i, "Infinity")),
  };
}

function labelsOf(text: string, line: string): Record<string, string> {
  const labels: Record<string, string> = {};
  label.lastIndex = 0;
  for (let at = 0; at < text.length; at = label.lastIndex) {
    label.lastIndex = at;
    const [, name, value] = label.exec(text) ?? [];
    if (name === undefined || value === undefined || name in labels) throw new Error(`No labels: ${line}`);
    labels[name] = value;
  }
  return labels;
}
