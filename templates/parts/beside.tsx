// Part. The steps of the method that decide nothing: measures beside the contrast, and other kinds of vision.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { RatioFormula } from "./formula.tsx";
import { Paper, Step } from "./step.tsx";
import { SwatchPair } from "./swatch.tsx";

/** The measures that are shown and do not decide. */
export function BesideStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="beside"
      heading="Beside it, never instead of it"
      source={
        <>
          <p>
            Contrast ratio: WCAG 2.2,{" "}
            <Paper href="https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio">definition</Paper>, and{" "}
            <Paper href="https://www.w3.org/WAI/WCAG22/Understanding/non-text-contrast.html">
              success criterion 1.4.11
            </Paper>
            , 3 to 1 for graphical objects.
          </p>
          <p>
            ΔE00: Sharma, Wu, Dalal, “The CIEDE2000 Color-Difference Formula”,{" "}
            <i>Color Research and Application</i> 30(1), 2005, 21–30; its 34 test pairs are tests of this
            code.
          </p>
          <p>
            Which of these pairs read clearly on cloth is common practice, without a source. The shades are
            ours.
          </p>
        </>
      }
    >
      <p>Three more measures are computed for every edge. None of them decides a grade.</p>
      <p>
        The <em>contrast ratio</em> of the web, from the screen colours, is made for text on a screen. Red on
        black passes its 3 to 1 for graphical objects, and no one who looks at flags calls that pair easy to
        see:
      </p>
      <RatioFormula />
      <p>
        <em>ΔE00</em> says how different two colours look, hue included. Under 5 two colours count as one
        colour, which is our own judgement. The third measure is the <a href="#facts">rule of tincture</a>.
      </p>
      <table class="pairs">
        <caption>Pairs of usual flag shades, measured by the code of this page.</caption>
        <thead>
          <tr>
            <th scope="col">Pair</th>
            <th scope="col" class="end">
              Contrast
            </th>
            <th scope="col">Grade</th>
            <th scope="col" class="end">
              Ratio
            </th>
            <th scope="col" class="end">
              ΔE00
            </th>
          </tr>
        </thead>
        <tbody>
          {method.pairs.map((pair) => (
            <tr key={pair.key}>
              <th scope="row">
                <SwatchPair hexes={pair.hexes} /> {pair.names[0]} / {pair.names[1]}
              </th>
              <td class="number end">{pair.contrast}</td>
              <td>{pair.grade}</td>
              <td class="number end">{pair.ratio}</td>
              <td class="number end">{pair.deltaE00}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}

/** Four kinds of vision. */
export function VisionStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="vision"
      heading="Seen otherwise"
      source={
        <>
          <p>
            Protan and deutan: Machado, Oliveira, Fernandes,{" "}
            <i>IEEE Transactions on Visualization and Computer Graphics</i> 15(6), 2009,{" "}
            <Paper href="https://doi.org/10.1109/TVCG.2009.113">doi 10.1109/TVCG.2009.113</Paper>, severity 1,
            in linear light. The paper does not say plainly whether its numbers are linear; its model is, and
            most implementations are.
          </p>
          <p>
            Tritan: Brettel, Viénot, Mollon, <i>Journal of the Optical Society of America A</i> 14(10), 1997,
            2647–2655, because the model of 2009 does not reach tritanopia.
          </p>
          <p>All matrices were read in published implementations, not in the papers.</p>
        </>
      }
    >
      <p>
        Each drawing is recoloured as an eye without one kind of cones would see it, and in the grey of its
        luminance. Contrast, grade and ΔE00 are measured again on those colours. Grey keeps luminance, so the
        contrast stays what it was: there only the ΔE00 of the two greys says anything new.
      </p>
      <table>
        <caption>Red and dark green, as each kind of vision sees them.</caption>
        <thead>
          <tr>
            <th scope="col">Vision</th>
            <th scope="col">The pair</th>
            <th scope="col" class="end">
              Contrast
            </th>
            <th scope="col" class="end">
              ΔE00
            </th>
          </tr>
        </thead>
        <tbody>
          {method.seen.map((row) => (
            <tr key={row.vision}>
              <th scope="row">{row.vision}</th>
              <td>
                <SwatchPair hexes={row.hexes} />
              </td>
              <td class="number end">{row.contrast}</td>
              <td class="number end">{row.deltaE00}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}
