import "./languages.test.js";
