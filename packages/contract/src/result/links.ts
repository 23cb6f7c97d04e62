import { z } from "zod/v3";
import { choice, list, text } from "../field/choice.js";

export const LinkMethod = z
  .enum(["GET", "POST"])
  .describe(
    "How to ask: `GET` the address as it is, or `POST` the scene that the answer is for, as it was sent.",
  );

const exampleLink = {
  name: "light-with-depth",
  method: "GET",
  href: "/v1/pictures/light-with-depth?visibility_m=25&water_hue=blue&min_depth_m=12&max_depth_m=12",
} as const;

export const Link = z
  .object({
    name: text({
      description:
        "What it shows: a picture of `/v1/pictures`, `slates` or `grades`. More may come; pass over names that you do not know.",
      example: exampleLink.name,
    }),
    method: choice(LinkMethod, {
      description:
        "`GET` where the scene fits a query string, and the address holds it; else `POST`. Slates and grades are always made by `POST`.",
      example: exampleLink.method,
    }),
    href: text({
      description:
        "Where it is, from the root of a service. What was assumed is left out, so that it is assumed again. How it is drawn, in which language and in which units it speaks go beside it in the query string: `format`, `width_px`, `theme`, `language`, `units`.",
      example: exampleLink.href,
    }),
  })
  .describe("A picture of what an answer says, or a file made of it.");

export const links = list(Link, {
  description:
    "Pictures of this answer, and files made of it; empty where there are none. Addresses are relative, the same online and offline: offline they lead to any service.",
  example: [exampleLink],
});
