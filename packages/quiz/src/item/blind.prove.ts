import "./blind.test.js";
