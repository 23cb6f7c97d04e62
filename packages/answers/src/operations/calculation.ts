import {
  type AnswerForm,
  type AnswerName,
  type FieldError,
  type FormFields,
  pathOf,
  type SceneName,
  type TextUnits,
} from "@sunfathom/contract";
import type { Refusal, Unanswered } from "../problem/refusal.js";
import type { lightSceneWith } from "../scene/light-scene.js";
import type { SceneKind } from "../scene/scene-kind.js";
import type { ShownBy } from "./links.js";
import type { Answered, Ready, Refused, Said } from "./outcome.js";
import { prepare } from "./prepare.js";

/** A calculation on scenes of one kind: who works it out, who puts that into words, and the form of what comes out. */
interface Worked<Own, Planned, Texts> {
  form: AnswerForm;
  /** @throws SceneProblem where the scene lies outside the model */
  plan: (scene: Own) => Planned;
  say: (planned: Planned, texts: Texts, units: TextUnits) => Said;
  /** What shows its answer, or is made of it, by name. */
  shownBy?: readonly ShownBy[];
}

/** What every calculation says of itself, whatever language it answers in. */
interface Named {
  /** Name, and last part of its path. */
  name: string;
  path: string;
  /** Component of the contract that its answer keeps, and its form. */
  answer: AnswerName;
  form: AnswerForm;
  /** Component of the contract that a request keeps. */
  request: SceneName;
  /** Fields of a request that mean nothing without a list. */
  besideLists: readonly string[];
}

/** A calculation before it is known in which language it answers. */
export interface Unsaid<Name extends string, Texts> extends Named {
  name: Name;
  /**
   * The same with the texts of one language, and with what becomes of a refusal.
   * @param wider a kind of scene that may stand for its own
   */
  in: <R extends Refused | Unanswered>(
    texts: Texts,
    refuse: (refusal: Refusal) => R,
    wider?: ReturnType<typeof lightSceneWith>,
  ) => Calculation<R> & { name: Name };
}

/** A calculation, whatever kind of scene it takes; where it has no answer, it gives an `R`. */
export interface Calculation<R extends Refused | Unanswered = Refused> extends Named {
  /**
   * Checks a scene from outside, and leaves the computing for later.
   * @param found errors that reading the request has already met
   */
  prepare: (raw: unknown, found?: readonly FieldError[]) => Ready<R> | R;
  /**
   * Answers a scene.
   * @param raw the scene as it came from outside; nothing is assumed of it
   * @returns the answer, or why there is none: all that is wrong
   * @throws only where the program itself is wrong
   */
  reply: (raw: unknown) => Answered | R;
}

/** Makes calculations of what works out scenes of one kind. */
export function taking<Wire extends object, Own extends object>(kind: SceneKind<Wire, Own>) {
  return <const Name extends string, Planned, Texts>({
    name,
    plan,
    say,
    form: own,
    shownBy = [],
  }: Worked<Own, Planned, Texts> & { name: Name }): Unsaid<Name, Texts> => {
    const named = {
      name,
      path: pathOf(name),
      answer: own.component,
      form: own,
      request: kind.component,
      besideLists: kind.besideLists,
    };
    return {
      ...named,
      in: <R extends Refused | Unanswered>(
        texts: Texts,
        refuse: (refusal: Refusal) => R,
        wider?: ReturnType<typeof lightSceneWith>,
      ) => {
        // Where it stands for another of the same name, it takes what that takes.
        const taken = wider?.component === kind.component ? (wider as object as typeof kind) : kind;
        const form = inFormOf(own, taken);
        const work = {
          form,
          plan: (scene: Own, units: TextUnits) => say(plan(scene), texts, units),
          refuse,
          shownBy,
        };
        const prepared: Calculation<R>["prepare"] = (raw, found = []) => prepare(taken, work, raw, found);
        return {
          ...named,
          form,
          prepare: prepared,
          reply: (raw) => {
            const scene = prepared(raw);
            return scene.status === "ready" ? scene.compute() : scene;
          },
        };
      },
    };
  };
}

/** The form of an answer that tells a scene of this kind. */
const inFormOf = (form: AnswerForm, { resolved }: { resolved?: FormFields }): AnswerForm =>
  resolved === undefined ? form : { ...form, form: { ...(form.form as FormFields), scene: resolved } };

/** What must be handed over so that an answer of the wire type `Wire` can be made of it. */
type Result<Wire> = Omit<Wire, "scene" | "model" | "links"> & { sources: string[] };

/** Names of fields, however deep, that `Own` has and `Wire` does not. */
type Undeclared<Own, Wire> = [keyof Wire] extends [never]
  ? // An open object: the contract leaves what is in it to a code.
    never
  : Own extends readonly (infer OwnItem)[]
    ? Wire extends readonly (infer WireItem)[]
      ? Undeclared<OwnItem, WireItem>
      : never
    : Own extends object
      ? {
          [K in keyof Own]-?: K extends keyof Wire
            ? Undeclared<NonNullable<Own[K]>, NonNullable<Wire[K]>>
            : K;
        }[keyof Own]
      : never;

/**
 * The type of what puts into words what was worked out for `Wire`: its result `Own` has all that the contract declares, and
 * nothing that it does not; another one that nothing fits, and that names the field, otherwise.
 */
export type Saying<Own, Wire> = [Undeclared<Own, Result<Wire>>] extends [never]
  ? (...given: never[]) => Result<Wire>
  : { notInTheContract: Undeclared<Own, Result<Wire>> };
