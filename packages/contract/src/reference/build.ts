import { text } from "../field/choice.js";

/** Names the code and texts that answer, as hosts of several services compare them. */
export const build = text({
  description:
    "A hash of the code and texts behind the answers: two services with the same hash give the same bytes. Unlike the version of the model, it changes with every wording.",
  example: "0123456789ab",
});
