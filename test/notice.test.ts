// Terms that go wherever the tables go: they stand at the top, and travel in the container and in the client's package.
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("..", import.meta.url));
const read = (path: string) => readFileSync(join(root, path), "utf8");
const notice = read("NOTICE");

describe("the notice", () => {
  it("holds the terms of the mean camera's table as they are", () => {
    expect(notice).toContain(read("packages/optics/tables/NOTICE-sensor.txt"));
  });

  it("names every publication whose terms ask for it", () => {
    const sources = read("packages/optics/tables/SOURCES.md");
    // What SOURCES.md says of terms, and who is named for it.
    const terms = [
      [/Open Government Licence v3/, "Open Government Licence v3.0", "Williamson & Hollins 2022"],
      [/Apache-2\.0, DOI/, "Apache License, version 2.0", "G. Asner"],
      [/open copy \(MIT\)/, "MIT License", "Cooksey, Allen & Tsai 2017"],
    ] as const;
    for (const [asked, licence, whose] of terms) {
      expect(sources).toMatch(asked);
      expect(notice).toContain(licence);
      expect(notice).toContain(whose);
    }
    const font = read("packages/pictures/node_modules/@expo-google-fonts/inter/LICENSE_FONT");
    const [copyright = ""] = /Copyright \d+ The Inter Project Authors/.exec(font) ?? [];
    expect(notice.toLowerCase()).toContain(copyright.toLowerCase());
  });

  it("is in the package of the client that the service gives", () => {
    const folder = join(root, "services/api/client");
    const [tarball = ""] = readdirSync(folder).filter((file) => file.endsWith(".tgz"));
    expect(
      execFileSync("tar", ["-xzOf", join(folder, tarball), "package/NOTICE"], { encoding: "utf8" }),
    ).toBe(notice);
  });

  it("is in the container", () => {
    expect(read("services/api/Dockerfile")).toMatch(/^COPY --from=build .*\/app\/NOTICE.* \.\/$/m);
  });
});
