import "./pipelined.test.js";
