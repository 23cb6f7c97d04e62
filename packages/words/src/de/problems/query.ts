import type { FieldsErrors, QueryDetails, QueryErrors } from "../../problems/query-texts.js";
import { type FieldText, fieldText, type Texts } from "../../problems/texts.js";

const badEscape = fieldText("Auf ein % folgen nicht zwei Hexadezimalziffern.", "%25 für %");

/** Was an einem Parameter eines Query-Strings falsch ist. */
export const queryTexts: Texts<QueryErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: ({ name }) => fieldText(`${name} ist mehrmals angegeben.`, `${name} einmal`),
  needs_post: () =>
    fieldText(
      "Eine Liste und was dazugehört passt in keinen Query-String.",
      "dieselbe Szene als Body eines POST",
    ),
  empty_value: ({ name }) => fieldText(`${name} hat keinen Wert.`, "ein Wert, oder gar kein Parameter"),
  not_a_number: ({ name }) => fieldText(`${name} ist keine Dezimalzahl.`, "eine Zahl wie 12 oder 12.5"),
  unknown_field: ({ taken }) =>
    fieldText("Einen Query-Parameter mit diesem Namen gibt es nicht.", takenTexts[taken]),
};

const takenTexts = {
  none: "keine Query-Parameter",
  fields_alone: "nur fields",
  look_alone: "format, width_px und theme",
};

/** Was an den Namen von Feldern falsch ist, nach denen eine Anfrage fragt. */
export const fieldsTexts: Texts<FieldsErrors, FieldText> = {
  malformed_escape: () => badEscape,
  repeated_parameter: () =>
    fieldText("fields ist mehrmals angegeben.", "fields einmal, die Namen durch Kommas getrennt"),
  empty_value: () =>
    fieldText("fields hat keinen Wert.", "Namen von Feldern, durch Kommas getrennt, oder brief"),
  wrong_length: ({ length, max_length }) =>
    fieldText(`fields hat ${length} Zeichen.`, `höchstens ${max_length}`),
  unknown_field: ({ name }) =>
    fieldText(
      name === ""
        ? "Zwischen zwei Kommas steht kein Name."
        : `Die Antwort hat kein Feld ${JSON.stringify(name)}.`,
      "Namen von Feldern der Antwort, solche in einem anderen hinter einem Punkt, etwa depths.depth_m; oder brief allein",
    ),
};

/** Warum ein Query-String als Ganzes abgelehnt wird. */
export const queryDetails: Texts<QueryDetails, string> = {
  takes_none: ({ method }) => `${method} nimmt unter diesem Pfad keine Query-Parameter an.`,
  takes_fields_alone: () => "POST nimmt keinen anderen Query-Parameter als fields an.",
  takes_look_alone: () => "POST nimmt keine anderen Query-Parameter als format, width_px und theme an.",
  no_such_look: () => "In dieser Form, wie du sie verlangst, gibt es das nicht.",
  no_such_fields: () => "Die Felder, nach denen du fragst, gibt es nicht.",
};
