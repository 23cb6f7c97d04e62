import { type Scene, startingGrade } from "@sunfathom/planner";
import { gradeCdl, gradeClf, type Saying } from "./grade-file.js";

/**
 * The starting grade of a scene as a file: a color decision list where one is asked for and holds it, else a process list.
 * @throws SceneProblem as `startingGrade` does
 */
export function gradeOf(
  scene: Scene,
  { format, id }: { format: string; id: string },
  saying: Saying,
): string {
  const grade = startingGrade(scene);
  return format === "cdl" && grade.finish === "basic_edit"
    ? gradeCdl(grade, id, saying)
    : gradeClf(grade, id, saying);
}
