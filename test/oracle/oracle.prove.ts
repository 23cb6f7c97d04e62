import "./oracle.test.js";
