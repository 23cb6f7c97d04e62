// The contract's names are those of the questions: neither package knows the other.
import {
  mostQuestions,
  qtiVersions,
  quizErrorCodes,
  quizInteractions,
  quizLanguages,
  quizLevels,
  quizPackageFormats,
  quizReleases,
  quizTemplates,
  quizTopics,
} from "@sunfathom/contract";
import {
  CATALOGUES,
  itemsFor,
  LEVELS,
  MOST_ITEMS,
  PACKAGE_FORMATS,
  packageFiles,
  RELEASES,
  TEMPLATES,
  TOPICS,
} from "@sunfathom/quiz";
import { describe, expect, it } from "vitest";

describe("the names of the contract", () => {
  it("are those of the questions, in their order", () => {
    expect(quizTemplates).toEqual(TEMPLATES.map(({ id }) => id));
    expect(quizLevels).toEqual(LEVELS);
    expect(quizReleases).toEqual(RELEASES);
    expect(quizTopics).toEqual(TOPICS);
    expect(quizLanguages).toEqual(Object.keys(CATALOGUES));
    expect(quizPackageFormats).toEqual(PACKAGE_FORMATS);
    expect(mostQuestions).toBe(MOST_ITEMS);
    expect([...quizInteractions].sort()).toEqual(
      [...new Set(TEMPLATES.map(({ interaction }) => interaction))].sort(),
    );
  });

  it.each(qtiVersions)("hold a version %s of the standard that packages come in", (version) => {
    const items = itemsFor({ seed: "names", level: "beginner", count: 1, units: "metric", language: "en" });
    const files = [...packageFiles(items, { version, language: "en", title: "names", keys: true })];
    expect(files.find(({ path }) => path === "imsmanifest.xml")?.content).toContain(`QTI`);
  });

  it("gives each error of the quiz one problem", () => {
    const codes = Object.values(quizErrorCodes).flat();
    expect(new Set(codes).size).toBe(codes.length);
  });
});
