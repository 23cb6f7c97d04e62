// The same with six dives, in every language.
import "./text-boxes.test.js";
