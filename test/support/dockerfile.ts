// A Dockerfile, read as a builder reads it.
import { DockerfileParser, type Instruction } from "dockerfile-ast";

/** A build stage: its FROM and what follows, up to the next one. */
export interface Stage {
  /** For example `node:20-slim`, or the name of an earlier stage. */
  image: string;
  /** Undefined where it has none. */
  name: string | undefined;
  instructions: readonly Instruction[];
}

export function stagesOf(text: string): Stage[] {
  const stages: (Stage & { instructions: Instruction[] })[] = [];
  for (const instruction of DockerfileParser.parse(text).getInstructions()) {
    if (instruction.getKeyword() === "FROM") {
      const [image = "", , name] = wordsOf(instruction);
      stages.push({ image, name, instructions: [] });
    } else stages.at(-1)?.instructions.push(instruction);
  }
  return stages;
}

/** The last instruction of a stage with this keyword: the one that holds. */
export function lastOf({ instructions }: Stage, keyword: string): Instruction | undefined {
  return instructions.filter((instruction) => instruction.getKeyword() === keyword).at(-1);
}

export function wordsOf(instruction: Instruction): string[] {
  return instruction.getArguments().map((argument) => argument.getValue());
}

/** The program and its arguments of an exec form such as `["node", "a.js"]`; undefined where a shell would run it. */
export function execForm(text: string): string[] | undefined {
  if (!text.startsWith("[")) return undefined;
  try {
    const words: unknown = JSON.parse(text);
    return Array.isArray(words) && words.every((word) => typeof word === "string") ? words : undefined;
  } catch {
    // What is no JSON is handed to a shell (Dockerfile reference, "Shell and exec form").
    return undefined;
  }
}
