// Loaded into a service under test: collects garbage often, so that its heap is what is alive and not how far the collector has let it
// grow, which takes longer than a short soak to come down again.
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

setFlagsFromString("--expose-gc");
const collect = runInNewContext("gc");
setInterval(collect, 200).unref();
