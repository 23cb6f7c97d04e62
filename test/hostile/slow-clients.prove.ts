import "./slow-clients.test.js";
