import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Copies the declarations that the compiler wrote. They name no neighbour of the workspace: both entries speak of the
 * generated types alone. What is loaded on demand is none of their business.
 * @param {string} from
 * @param {string} to
 */
export function copyDeclarations(from, to) {
  const names = readdirSync(from, { recursive: true, encoding: "utf8" }).filter(
    (name) => name.endsWith(".d.ts") && !name.startsWith("package") && !/wider|drawn/.test(name),
  );
  for (const name of names) {
    const target = join(to, name);
    cpSync(join(from, name), target);
    const text = readFileSync(target, "utf8");
    const neighbour = /["']@sunfathom\/[^"']+["']/.exec(text)?.[0];
    if (neighbour !== undefined) throw new Error(`${name} speaks of ${neighbour}, which is not published.`);
    writeFileSync(target, text.replace(/\n\/\/# sourceMappingURL=.*\n?$/, "\n"));
  }
}
