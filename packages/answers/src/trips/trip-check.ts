import {
  mostTripJudged,
  repeatedIds,
  type TripAdviceRequest,
  tripCameraNames,
  tripDiveNames,
} from "@sunfathom/contract";
import type { Findings } from "../validate/findings.js";
import { member, topLevelName } from "../validate/pointer.js";

type Names = readonly string[];

/** Fields that a scene has somewhere, but not here. */
function checkNames(
  part: object,
  pointer: string,
  {
    code,
    own,
    known,
  }: { code: "trip_dive_field" | "trip_camera_field"; own: Names; known: ReadonlySet<string> },
  findings: Findings,
): void {
  for (const name of Object.keys(part))
    if (known.has(name) && !own.includes(name))
      findings.add(() => ({ pointer: member(pointer, name), code, parameters: { name } }));
}

/** Equal for filters that are given alike. */
export function filterOf(piece: object): string {
  const given = piece as Readonly<Record<string, unknown>>;
  const names = ["filter_kind", "filter_density", "filter_stops", "filter_transmittance", "filter_samples"];
  return JSON.stringify(names.map((name) => given[name]));
}

/** Dives times cameras that differ times filters that differ, none among them: what is judged, at most. */
function judgedIn({ dives, guests, shelf = [] }: TripAdviceRequest): number {
  const shared = shelf.map(filterOf);
  const byCamera = new Map<string, Set<string>>();
  for (const { camera, kit = [] } of guests) {
    const key = JSON.stringify(camera);
    const filters = byCamera.get(key) ?? new Set(shared);
    for (const piece of kit) if (piece.item === "lens_filter") filters.add(filterOf(piece));
    byCamera.set(key, filters);
  }
  return dives.length * [...byCamera.values()].reduce((sum, filters) => sum + filters.size + 1, 0);
}

/** What goes wrong between the parts of a trip; not asked of parts that are not well formed themselves. */
export function checkTrip(
  request: TripAdviceRequest,
  findings: Findings,
  /** Names of all fields that a scene can have. */
  known: ReadonlySet<string>,
): void {
  const troubled = new Set(findings.pointers.map(topLevelName));
  const isWell = (...names: string[]) => names.every((name) => !troubled.has(name));
  const unique = (list: readonly { id: string }[], pointer: string) => {
    for (const { pointer: at, parameters } of repeatedIds(list, pointer))
      findings.add(() => ({ pointer: at, code: "trip_ids_unique", parameters }));
  };
  const { dives, guests, shelf = [], rings = [], calendar_for } = request;
  if (isWell("dives")) {
    unique(dives, "/dives");
    const dive = { code: "trip_dive_field", own: tripDiveNames, known } as const;
    for (const [d, { scene }] of dives.entries()) checkNames(scene, `/dives/${d}/scene`, dive, findings);
  }
  if (isWell("guests")) {
    unique(guests, "/guests");
    const camera = { code: "trip_camera_field", own: tripCameraNames, known } as const;
    for (const [g, guest] of guests.entries()) {
      checkNames(guest.camera, `/guests/${g}/camera`, camera, findings);
      unique(guest.kit ?? [], `/guests/${g}/kit`);
    }
    if (calendar_for !== undefined && isWell("calendar_for") && !guests.some(({ id }) => id === calendar_for))
      findings.add(() => ({
        pointer: "/calendar_for",
        code: "trip_guest_known",
        parameters: { id: calendar_for },
      }));
  }
  if (isWell("shelf")) {
    unique(shelf, "/shelf");
    for (const [s, { item }] of shelf.entries())
      if (item !== "lens_filter")
        findings.add(() => ({ pointer: `/shelf/${s}/item`, code: "trip_shelf_filters", parameters: {} }));
  }
  if (isWell("rings")) unique(rings, "/rings");
  if (isWell("dives", "guests", "shelf")) {
    const judged = judgedIn(request);
    if (judged > mostTripJudged)
      findings.add(() => ({
        pointer: "/dives",
        code: "trip_size",
        parameters: { judged, most: mostTripJudged },
      }));
  }
}
