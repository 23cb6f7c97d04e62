import "./bounds.test.js";
