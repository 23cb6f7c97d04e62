/** What is wrong with the parameters of a query string, by the code of the error. */
export interface QueryErrors {
  malformed_escape: Nothing;
  repeated_parameter: { name: string };
  needs_post: { name: string };
  empty_value: { name: string };
  not_a_number: { name: string };
  unknown_field: { name: string; taken: "none" | "fields_alone" | "look_alone" };
}

/** What is wrong with the names of fields that a query asks for. */
export interface FieldsErrors {
  malformed_escape: Nothing;
  repeated_parameter: Nothing;
  empty_value: Nothing;
  wrong_length: { length: number; max_length: number };
  /** `name` empty for one between two commas. */
  unknown_field: { name: string };
}

/** Why a query as a whole is refused. */
export interface QueryDetails {
  takes_none: { method: string };
  takes_fields_alone: Nothing;
  /** Of pictures. */
  takes_look_alone: Nothing;
  no_such_look: Nothing;
  no_such_fields: Nothing;
}

type Nothing = Record<never, never>;
