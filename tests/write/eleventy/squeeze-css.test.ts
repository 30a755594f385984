import { expect, test } from "vitest";
import { squeezeCss } from "../../../src/write/eleventy/squeeze-css.ts";

test.each([
  ["a {\n  color: red;\n}\n", "a{color:red}"],
  ["/* why */ a,\nb > c {\n  margin: 0 0.5rem;\n}", "a,b>c{margin:0 .5rem}"],
  ['a::before {\n  content: ", /* so */ ";\n}', 'a::before{content:", /* so */ "}'],
  ["a {\n  width: calc(100% + 0.8rem);\n}", "a{width:calc(100% + .8rem)}"],
  ["a {\n  font: 600 1rem / 1.2 b;\n}", "a{font:600 1rem/1.2 b}"],
  [
    "@media (min-width: 48rem) {\n  a :hover {\n    top: -0.5px;\n  }\n}",
    "@media (min-width:48rem){a :hover{top:-.5px}}",
  ],
  ["a { top: 10.05rem; }", "a{top:10.05rem}"],
])("%j is sent as %j", (written, sent) => {
  expect(squeezeCss(written)).toBe(sent);
});
