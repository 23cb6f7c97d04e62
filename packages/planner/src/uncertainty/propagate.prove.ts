import "./propagate.test.js";
