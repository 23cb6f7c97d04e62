import "./places.test.js";
