/** The header by which an operation chooses the language of its texts, as the description tells it. */
export const acceptLanguage = {
  type: "string",
  description: "Languages that the caller reads (RFC 9110, section 12.5.4), where `language` names none.",
};
