// The same with a hundred packages.
import "./play.test.js";
