/**
 * Dotted names of the fields of an answer, `depths.depth_m` for instance; what is in a list goes by the list's name. What a code
 * comes with, `parameters`, is taken whole.
 */
export type FieldsOf<Answer> = Answer extends readonly (infer Item)[]
  ? FieldsOf<Item>
  : Answer extends object
    ? string extends keyof Answer
      ? never
      : {
          [Name in keyof Answer & string]: Name | `${Name}.${FieldsOf<NonNullable<Answer[Name]>>}`;
        }[keyof Answer & string]
    : never;

/** What is left of an answer by the names of fields. */
export type Picked<Answer, Names extends string> = Answer extends readonly (infer Item)[]
  ? Picked<Item, Names>[]
  : Answer extends object
    ? {
        [Name in keyof Answer as Name extends Head<Names> ? Name : never]: Name extends Names
          ? Answer[Name]
          : Picked<Answer[Name], Tail<Names, Name & string>>;
      }
    : Answer;

type Head<Names extends string> = Names extends `${infer First}.${string}` ? First : Names;

type Tail<Names extends string, First extends string> = Names extends `${First}.${infer Rest}` ? Rest : never;
