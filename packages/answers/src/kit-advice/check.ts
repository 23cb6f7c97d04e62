import {
  besideKitDives,
  type KitAdviceRequest,
  type KitRuleParameters,
  pieceFields,
  piecesNeed,
  repeatedIds,
} from "@sunfathom/contract";
import type { Findings } from "../validate/findings.js";
import { member, topLevelName } from "../validate/pointer.js";

type Piece = KitAdviceRequest["pieces"][number];

/** What goes wrong between the parts of a request for a kit; not asked of parts that are not well formed themselves. */
export function checkKit(request: KitAdviceRequest, findings: Findings): void {
  const troubled = new Set(findings.pointers.map(topLevelName));
  const isWell = (name: string) => !troubled.has(name);
  const { scene, dives, pieces } = request;
  if (scene !== undefined && isWell("scene")) checkScene(scene, "/scene", findings);
  if (isWell("dives")) {
    checkIds(dives, "/dives", "dive_ids_unique", findings);
    for (const [nth, dive] of dives.entries()) checkScene(dive.scene, `/dives/${nth}/scene`, findings);
  }
  if (isWell("pieces")) {
    checkIds(pieces, "/pieces", "piece_ids_unique", findings);
    for (const [nth, piece] of pieces.entries()) checkPiece(piece, `/pieces/${nth}`, findings);
  }
}

function checkIds(
  list: readonly { id: string }[],
  pointer: string,
  code: "dive_ids_unique" | "piece_ids_unique",
  findings: Findings,
): void {
  for (const { pointer: at, parameters } of repeatedIds(list, pointer))
    findings.add(() => ({ pointer: at, code, parameters }));
}

function checkScene(scene: object, pointer: string, findings: Findings): void {
  for (const name of besideKitDives)
    if (name in scene)
      findings.add(() => ({ pointer: member(pointer, name), code: "kit_dive_field", parameters: { name } }));
}

function checkPiece(piece: Piece, pointer: string, findings: Findings): void {
  const { id: _, item, ...given } = piece;
  const fields = pieceFields[item];
  for (const name of Object.keys(given))
    if (!fields.includes(name))
      findings.add(() => ({
        pointer: member(pointer, name),
        code: "piece_field",
        parameters: { name, item, fields },
      }));
  const missing = piecesNeed[item].filter((name) => !(name in given));
  const parameters: KitRuleParameters["piece_incomplete"] = { item, missing };
  if (missing.length > 0) findings.add(() => ({ pointer, code: "piece_incomplete", parameters }));
}
