import "./contract-fuzz.test.js";
