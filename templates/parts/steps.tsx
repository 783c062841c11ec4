// Part. The steps of the method that decide a grade: the light a cloth gives back, contrast, and what stands beside it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { Track } from "../figures/track.tsx";
import { ClothFigure } from "../figures/worked.tsx";
import { ContrastFormula, LuminanceFormula, ReflectanceFormula } from "./formula.tsx";
import { Paper, Step } from "./step.tsx";
import { SwatchPair } from "./swatch.tsx";

/** From a colour on a screen to the light that cloth gives back. */
export function LightStep({ method }: { method: MethodPage }): JSX.Element {
  const { cloth, laws, ranges, near, worked, gradeMarks } = method;
  return (
    <Step
      id="reflectance"
      figure={
        <>
          {worked && <ClothFigure worked={worked} limits={cloth.marks} />}
          <table class="tracks" aria-labelledby="near-figure">
            <caption id="near-figure">
              Near the line: cloth of {ranges.materials.black} to {ranges.materials.white}% (ring) and{" "}
              {ranges.paint.black} to {ranges.paint.white}% (dot)
            </caption>
            <tbody>
              <tr>
                <th scope="row">
                  <SwatchPair hexes={near.hexes} /> {near.names[0]} / {near.names[1]}
                </th>
                <td class="number">
                  <bdi>
                    {near.contrast} {near.grade}, {near.widest.contrast} {near.widest.grade}
                  </bdi>
                </td>
                <td class="track-cell">
                  <Track ring={near.x} dot={near.widest.x} marks={gradeMarks} />
                </td>
              </tr>
            </tbody>
          </table>
        </>
      }
      source={
        <p>
          Luminance: <Paper href="https://www.w3.org/TR/WCAG22/#dfn-relative-luminance">WCAG 2.2</Paper>.
          sRGB: IEC 61966-2-1. Ranges: pages on building materials, a paint maker’s chart; laws: as others
          tell them; all second-hand. The straight line from black to white: no source. Our own judgement:
          near the line.
        </p>
      }
    >
      <p>
        A screen number says how much light a colour gives. We take its luminance, from 0 to 1, in linear
        light:
      </p>
      <LuminanceFormula />
      <p>
        Cloth is never quite black or quite white, and by screen numbers two dark colours seem easier to tell
        apart than they are. So luminance is placed between the blackest and the whitest cloth, in percent:
      </p>
      <ReflectanceFormula black={cloth.black} white={cloth.white} />
      <p id="near-the-line">
        Building materials run from about {ranges.materials.black} to {ranges.materials.white}%, one maker’s
        paints from {ranges.paint.black} to {ranges.paint.white}%. A grade that the wider range would change
        is marked <em>near the line</em>. Where a law fixes the cloth a gallery sets 0 and 100, and then{" "}
        {laws.map(sayLaw).join("; ")}.
      </p>
    </Step>
  );
}

function sayLaw({ colours, contrast, grade }: MethodPage["laws"][number]): string {
  return `${colours.join(" on ")} has a contrast of ${contrast}, ${grade}`;
}

/** The contrast that decides, its grades, and how usual pairs come out. */
export function ContrastStep({
  method: { published, pairs, gradeMarks },
}: {
  method: MethodPage;
}): JSX.Element {
  return (
    <Step
      id="contrast"
      figure={
        <table class="tracks pairs">
          <caption>How usual pairs come out; marks at 30, 45 and 60%</caption>
          <thead>
            <tr>
              <th scope="col">Pair</th>
              <th scope="col">Contrast</th>
              <th scope="col">
                <span class="unseen">On a scale from 0 to 100 percent</span>
              </th>
              <th scope="col" class="end">
                Ratio
              </th>
              <th scope="col" class="end">
                ΔE00
              </th>
            </tr>
          </thead>
          <tbody>
            {pairs.map((pair) => (
              <tr key={pair.key}>
                <th scope="row">
                  <SwatchPair hexes={pair.hexes} /> {pair.names[0]} / {pair.names[1]}
                </th>
                <td class="whole">
                  <bdi>
                    <span class="number">{pair.contrast}</span> {pair.grade}
                  </bdi>
                </td>
                <td class="track-cell">
                  <Track dot={pair.x} marks={gradeMarks} />
                </td>
                <td class="number end">{pair.ratio}</td>
                <td class="number end">{pair.deltaE00}</td>
              </tr>
            ))}
          </tbody>
        </table>
      }
      source={
        <p>
          Bowman and Sapolinski: AS 1428.1:2009, Appendix B; AS/NZS 1428.4.1, Appendix E; second-hand. The
          percentage compares with no other scale: Boon and others, <i>Work</i> 70(4),{" "}
          <Paper href="https://doi.org/10.3233/WOR-205158">2021</Paper>. Our own judgement: that a charge is a
          small separate object; the shades of the pairs. Which pairs read clearly: common practice, no
          source.
        </p>
      }
    >
      <p>
        Contrast compares the light that two colours give back. It is 0% where both give back the same, and
        more the further they are apart:
      </p>
      <ContrastFormula />
      <table class="narrow">
        <caption>The least that people with low vision need</caption>
        <tbody>
          <GradeRow grade="weak" range="under 30%" use="below every step" />
          <GradeRow grade="soft" range="30 to under 45%" use="large building elements" />
          <GradeRow grade="clear" range="45 to under 60%" use="small separate objects: charges" />
          <GradeRow grade="strong" range="60% and over" use="small objects in two colours" />
        </tbody>
      </table>
      <p>
        A charge is a small separate object, so an edge is clear from 45%. The example published with the
        formula, {published.reflectances}, has {published.published}; here {published.computed}.
      </p>
    </Step>
  );
}

function GradeRow({ grade, range, use }: { grade: string; range: string; use: string }): JSX.Element {
  return (
    <tr>
      <th scope="row">{grade}</th>
      <td class="number">
        <bdi>{range}</bdi>
      </td>
      <td>{use}</td>
    </tr>
  );
}

/** The measures that are shown and do not decide. */
export function BesideStep({ method: { walk, beside } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="beside"
      figure={
        <p class="tracks-line">
          <SwatchPair hexes={walk.hexes} /> {walk.names[0]} / {walk.names[1]}: contrast ratio{" "}
          <span class="number">{walk.ratio}</span>, ΔE00 <span class="number">{walk.deltaE00}</span>, contrast{" "}
          <span class="number">{walk.contrast}</span>, {walk.grade}
        </p>
      }
      source={
        <p>
          WCAG 2.2, <Paper href="https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio">ratio</Paper> and{" "}
          <Paper href="https://www.w3.org/WAI/WCAG22/Understanding/non-text-contrast.html">1.4.11</Paper>.
          Sharma, Wu, Dalal, <Paper href="https://doi.org/10.1002/col.20070">CIEDE2000</Paper>, 2005; its 34
          test pairs test this code. That red on black is hard to see: common practice, no source.
        </p>
      }
    >
      <p>
        Three more measures stand beside contrast, and none of them decides. The <em>contrast ratio</em> of
        the web is made for screens: {walk.names[0]} on {walk.names[1]} passes its 3 to 1, and yet no one who
        looks at flags calls it easy to see. <em>ΔE00</em> says how different two colours look, hue included.
        The third is the <a href="#facts">rule of tincture</a>.
      </p>
      {beside.map(({ about, source }) => (
        <p key={about}>
          {about} {source}.
        </p>
      ))}
    </Step>
  );
}
