import "./behind-errors.test.js";
