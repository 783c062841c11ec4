// A program that imports the package, as the guide shows it, and the flag that it measures.

export const flag =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#15244a" d="M0 0h3v2H0z"/><circle cx="1.5" cy="1" r=".5" fill="#701c2b"/></svg>';

export const imported = `import { compare, measure, rankOptions, readDrawing, recolour } from "counterchange";

const svg = \`${flag}\`;
const { value, problems } = await measure(svg, { distance: 20 });
if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
const change = { replace: "#701c2b", with: "white" };
const best = (await rankOptions(svg)).value?.options[0];
const other = recolour(svg, { replace: "#701c2b", with: best?.with ?? "gold" }).value;
if (other === undefined || readDrawing(other).value?.colours.length !== 2) throw new Error("not recoloured");
console.log((await compare(svg, change)).value?.verdict);
`;
