/** The files of a content package: manifest, test, items and pictures (IMS Content Packaging 1.1 profile of QTI). */
import { cautionsOf } from "../cautions/cautions-of.js";
import type { Item } from "../item/item.js";
import { CATALOGUES, type Language } from "../messages/catalogue.js";
import { type Element, el, text, xml } from "../xml/xml.js";
import type { PackageFile } from "../zip/zip-files.js";
import { itemMetadata, LOM, QTI_METADATA } from "./item-metadata.js";
import { itemXml } from "./item-xml.js";
import { inVersion, type QtiVersion } from "./names.js";
import { outcome } from "./outcome.js";
import { MAXSCORE, SCORE, sumOfScores } from "./processing.js";
import { rubric } from "./rubric.js";

interface Resource {
  identifier: string;
  href: string;
  /** Further files that belong to it. */
  files: readonly string[];
  metadata: Element;
}

const PROFILE = {
  "3.0": {
    manifest: "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1",
    schemaFile: "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd",
    schema: "QTI Package",
    schemaVersion: "3.0.0",
    item: "imsqti_item_xmlv3p0",
    test: "imsqti_test_xmlv3p0",
  },
  "2.1": {
    manifest: "http://www.imsglobal.org/xsd/imscp_v1p1",
    schemaFile: "http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd",
    schema: "QTIv2.1 Package",
    schemaVersion: "1.0.0",
    item: "imsqti_item_xmlv2p1",
    test: "imsqti_test_xmlv2p1",
  },
} as const;

const TEST_PATH = "test.xml";

export interface PackageOptions {
  version: QtiVersion;
  language: Language;
  title: string;
  /** Whether keys, feedback and solutions are in it, so that a platform can mark by itself. */
  keys: boolean;
  /** Further files to put beside the questions. */
  beside?: readonly PackageFile[];
}

/** One file after the other, so that no more than one item's markup is held at a time. */
export function* packageFiles(
  items: readonly Item[],
  { version, language, title, keys, beside = [] }: PackageOptions,
): Generator<PackageFile> {
  const say = CATALOGUES[language];
  const resources: Resource[] = [];
  for (const item of items) {
    const picture = item.picture ? `${item.id}.svg` : undefined;
    const document = itemXml(item, {
      version,
      say,
      keys,
      ...(picture ? { picture: `../assets/${picture}` } : {}),
    });
    const href = `items/${item.id}.xml`;
    const asset = picture ? `assets/${picture}` : undefined;
    yield { path: href, content: document.xml };
    if (item.picture && asset) yield { path: asset, content: item.picture.svg };
    resources.push({
      identifier: document.identifier,
      href,
      files: asset ? [asset] : [],
      metadata: itemMetadata(item, { language, keys }),
    });
  }
  yield {
    path: TEST_PATH,
    content: testXml(resources, rubric(cautionsOf(items, language), version, language), {
      version,
      title,
      keys,
    }),
  };
  yield* beside;
  const further = beside.map(({ path }) => path);
  yield { path: "imsmanifest.xml", content: manifestXml(resources, further, version) };
}

/** With the cautions of the whole paper before its questions, for players to show first. */
function testXml(
  resources: readonly Resource[],
  cautions: readonly Element[],
  { version, title, keys }: Pick<PackageOptions, "version" | "title" | "keys">,
): string {
  const root = el(
    "assessmentTest",
    { identifier: "paper", title },
    ...(keys
      ? [
          outcome(SCORE, "float", "0", { normalMaximum: resources.length }),
          outcome(MAXSCORE, "float", String(resources.length)),
        ]
      : []),
    el(
      "testPart",
      { identifier: "part1", navigationMode: "nonlinear", submissionMode: "individual" },
      el(
        "assessmentSection",
        { identifier: "section1", title, visible: "true" },
        ...cautions,
        ...resources.map(({ identifier, href }) => el("assessmentItemRef", { identifier, href })),
      ),
    ),
    ...(keys ? [sumOfScores()] : []),
  );
  return xml(inVersion(root, version));
}

function manifestXml(
  resources: readonly Resource[],
  further: readonly string[],
  version: QtiVersion,
): string {
  const profile = PROFILE[version];
  const file = (href: string): Element => el("file", { href });
  return xml(
    el(
      "manifest",
      {
        xmlns: profile.manifest,
        "xmlns:imsmd": LOM,
        "xmlns:imsqti": QTI_METADATA[version],
        "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
        "xsi:schemaLocation": `${profile.manifest} ${profile.schemaFile}`,
        identifier: "manifest",
      },
      el(
        "metadata",
        {},
        el("schema", {}, text(profile.schema)),
        el("schemaversion", {}, text(profile.schemaVersion)),
      ),
      el("organizations"),
      el(
        "resources",
        {},
        el(
          "resource",
          { identifier: "paper", type: profile.test, href: TEST_PATH },
          file(TEST_PATH),
          ...resources.map(({ identifier }) => el("dependency", { identifierref: identifier })),
        ),
        ...resources.map(({ identifier, href, files, metadata }) =>
          el("resource", { identifier, type: profile.item, href }, metadata, file(href), ...files.map(file)),
        ),
        ...further.map((href, i) =>
          el("resource", { identifier: `beside${i + 1}`, type: "webcontent", href }, file(href)),
        ),
      ),
    ),
  );
}
