import "./wrong.test.js";
