// The golden figures of whole plans, which take as long as those of all other calculations together.
import { holdGolden } from "./hold.js";

holdGolden({ isOurs: (name) => name === "dive-advice", version: "plan-version" });
