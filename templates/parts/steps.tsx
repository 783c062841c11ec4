// Part. The steps of the method that decide a grade: the light a cloth gives back, and contrast.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { ContrastFormula, LuminanceFormula, ReflectanceFormula } from "./formula.tsx";
import { Paper, Step } from "./step.tsx";
import { SwatchChip } from "./swatch.tsx";

/** From a colour on a screen to the light that cloth gives back. */
export function LightStep({ method }: { method: MethodPage }): JSX.Element {
  const { cloth, laws, ranges, walk } = method;
  return (
    <Step
      id="reflectance"
      heading="Reflectance of the cloth"
      source={
        <>
          <p>
            Relative luminance: WCAG 2.2,{" "}
            <Paper href="https://www.w3.org/TR/WCAG22/#dfn-relative-luminance">definition</Paper>; sRGB as in
            IEC 61966-2-1.
          </p>
          <p>
            The ranges: published pages on the light reflectance of building materials, and one paint maker’s
            chart. The laws: as others tell them. All were read second-hand. For the straight line between
            black and white there is no published source. That a grade is called near the line is our own
            judgement.
          </p>
        </>
      }
    >
      <p>
        A colour in a drawing is a number for a screen. Its red, green and blue are first made linear in
        light, and added up to the relative luminance, 0 for black and 1 for white:
      </p>
      <LuminanceFormula />
      <p>
        Cloth and paint never reach black 0 or white 100, and on a screen number alone dark pairs look better
        than they are. So the luminance is placed between the blackest and the whitest cloth, {cloth.black}{" "}
        and {cloth.white} percent in this gallery:
      </p>
      <ReflectanceFormula black={cloth.black} white={cloth.white} />
      <p>
        Worked out: <SwatchChip hex={walk.hexes[0]} /> {walk.names[0]} <code>{walk.hexes[0]}</code> has a
        luminance of {walk.luminances[0]}, so its cloth reflects {cloth.black} + {cloth.span} ·{" "}
        {walk.luminances[0]} = {walk.reflectances[0]} percent. <SwatchChip hex={walk.hexes[1]} />{" "}
        {walk.names[1]} reflects {walk.reflectances[1]} percent.
      </p>
      <p id="near-the-line">
        Charts of building materials put the blackest black near {ranges.materials.black} percent and the
        whitest white near {ranges.materials.white}; the paints of one maker run from {ranges.paint.black} to{" "}
        {ranges.paint.white}. A grade that would be another on cloth of {ranges.paint.black} to{" "}
        {ranges.paint.white} is <em>near the line</em>. Where the colours of the drawings are cloth values
        already, as where a law fixes them, a gallery sets black to 0 and white to 100. A law that fixes{" "}
        {laws.map(sayLaw).join("; one that fixes ")}.
      </p>
    </Step>
  );
}

function sayLaw({ colours, contrast, grade }: MethodPage["laws"][number]): string {
  return `${colours.join(" and ")} makes a contrast of ${contrast}, ${grade}`;
}

/** The contrast that decides, and its grades. */
export function ContrastStep({ method }: { method: MethodPage }): JSX.Element {
  const { walk } = method;
  return (
    <Step
      id="contrast"
      heading="Contrast and grade"
      source={
        <>
          <p>
            Formula of Bowman and Sapolinski: AS 1428.1:2009, Appendix B, and AS/NZS 1428.4.1, Appendix E. The
            same standards ask for 30, 45 and 60 percent. Read in published summaries, not in the standards
            themselves.
          </p>
          <p>
            Scales of contrast are not linearly related: Boon, Dain, Bridge, Relf, Manandhar, <i>Work</i>{" "}
            70(4), 2021, <Paper href="https://doi.org/10.3233/WOR-205158">doi 10.3233/WOR-205158</Paper>. A
            percentage of ours is comparable with no other.
          </p>
          <p>That a charge counts as a small separate object is our own judgement.</p>
        </>
      }
    >
      <p>
        The contrast of two colours that meet is their luminance contrast in percent, of the two reflectances:
      </p>
      <ContrastFormula />
      <p>
        Worked out: {walk.names[0]} on {walk.names[1]}, {walk.reflectances[0]} against {walk.reflectances[1]},
        has a contrast of {walk.contrast}, which is {walk.grade}. The steps of the grades are floors that the
        standards set so that people with low vision can tell things apart; they are no matter of taste.
      </p>
      <table>
        <caption>Grades. A charge is a small separate object, so clear starts at 45.</caption>
        <thead>
          <tr>
            <th scope="col">Grade</th>
            <th scope="col">Contrast</th>
            <th scope="col">The published step</th>
          </tr>
        </thead>
        <tbody>
          <GradeRow grade="weak" range="under 30" use="below every step" />
          <GradeRow grade="soft" range="30 to under 45" use="large building elements" />
          <GradeRow grade="clear" range="45 to under 60" use="small separate objects" />
          <GradeRow grade="strong" range="60 and over" use="small objects in two colours" />
        </tbody>
      </table>
      <table>
        <caption>
          Published examples, in the whole numbers of their sources, beside what the code of this page
          computes.
        </caption>
        <thead>
          <tr>
            <th scope="col">Reflectances</th>
            <th scope="col" class="end">
              Published
            </th>
            <th scope="col" class="end">
              Computed
            </th>
          </tr>
        </thead>
        <tbody>
          {method.published.map((row) => (
            <tr key={row.reflectances}>
              <th scope="row" class="number">
                {row.reflectances}
              </th>
              <td class="number end">{row.published}</td>
              <td class="number end">{row.computed}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}

function GradeRow({ grade, range, use }: { grade: string; range: string; use: string }): JSX.Element {
  return (
    <tr>
      <th scope="row">{grade}</th>
      <td class="number">{range}</td>
      <td>{use}</td>
    </tr>
  );
}
