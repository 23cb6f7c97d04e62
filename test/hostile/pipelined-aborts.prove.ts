import "./pipelined-aborts.test.js";
