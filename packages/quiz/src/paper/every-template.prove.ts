import "./every-template.test.js";
