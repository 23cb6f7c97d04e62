import { text } from "../field/choice.js";

/** Names the code and texts that answer, as hosts of several services compare them. */
export const build = text({
  description:
    "The code and texts that answer, as a hash: two services with the same one give the same bytes. It changes with every wording, unlike the version of the model.",
  example: "0123456789ab",
});
