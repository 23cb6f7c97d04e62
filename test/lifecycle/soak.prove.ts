import "./soak.test.js";
