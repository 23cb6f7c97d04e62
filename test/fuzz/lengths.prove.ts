import "./lengths.test.js";
