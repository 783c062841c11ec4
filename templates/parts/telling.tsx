// Part. The steps of the method about what pages tell beside their numbers: the words, fimbriation, and the facts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { Paper, Step } from "./step.tsx";

/** How the words are made. */
export function WordsStep(): JSX.Element {
  return (
    <Step
      id="words"
      heading="What got better and worse"
      source={
        <>
          <p>
            Fimbriation: a term of heraldry. That it frees a pair from the rule of tincture is common
            teaching.
          </p>
          <p>
            What counts as a line is our own judgement: a mean width under 8 percent of the flag’s height,
            lengths on its two sides that differ by less than a third, and a pair that meets along no more
            than a fifth of it.
          </p>
        </>
      }
    >
      <p>
        What is told of an edge is made of the numbers and the names on the page, by rule, and of nothing
        else. Edges of what has to be seen come first. Of each it is said what it had and has, and along how
        much of the outline of what has to be seen it runs or, where it borders none of that, of all edge
        length.
      </p>
      <p>
        A <em>fimbriation</em> is a narrow line of a third colour that keeps two others apart. While it can be
        seen from the viewing distance, its own two edges count and the pair behind it does not. The words say
        what it does for that pair: the contrast that the two would have if they met, and the lower contrast
        of the two edges that stand instead.
      </p>
    </Step>
  );
}

/** The facts beside the numbers. */
export function FactsStep(): JSX.Element {
  return (
    <Step
      id="facts"
      heading="Facts, none a score"
      source={
        <>
          <p>
            Rule of tincture: A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapter VII. The
            exemptions are common teaching.
          </p>
          <p>
            Count of colours:{" "}
            <Paper href="https://nava.org/good-flag-bad-flag">
              <i>Good Flag, Bad Flag</i>
            </Paper>
            , North American Vexillological Association, 2006, third principle;{" "}
            <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014,
            section 3.1.
          </p>
        </>
      }
    >
      <p>Each study page lists these. None of them enters a grade, a number or the verdict.</p>
      <dl class="definitions">
        <dt>Clear-edge share</dt>
        <dd>How much of all edge length is clear or strong.</dd>
        <dt>Near the line</dt>
        <dd>
          Edges whose grade would be another on other <a href="#near-the-line">cloth</a>.
        </dd>
        <dt>Hue alone</dt>
        <dd>
          Edges with a contrast under 30 and ΔE00 of 20 or more: told apart by hue alone, they go in dusk, in
          grey print and for many colour-blind readers. Both steps are our own judgement.
        </dd>
        <dt>Rule of tincture</dt>
        <dd>
          No metal on metal, no colour on colour. White and yellow are metals; red, blue, green, black and
          purple are colours; of the others the rule does not speak. Parts of the field that lie beside each
          other are exempt (here: both reach the border), and so are fimbriations. Furs are exempt too, but
          are not recognised here.
        </dd>
        <dt>Number of colours</dt>
        <dd>
          Those over half a percent of the area, shades closer than ΔE00 5 counted as one. Published guides
          advise two or three.
        </dd>
        <dt>Warnings</dt>
        <dd>
          What makes the figures of a flag less certain: parts near the limit of sight, shapes left out of the
          measurement, colours that are not flat.
        </dd>
      </dl>
    </Step>
  );
}

/** How options are found and ordered. */
export function OptionsStep({ method: { limits } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="options"
      heading="Other single changes"
      source={
        <>
          <p>
            The order, the third of an outline, and the steps of {limits.leastGain} and {limits.firstWithin}{" "}
            points are our own judgement.
          </p>
          <p>
            ΔE*ab {limits.departure} as the tolerance of flag colours: M. Melgosa, L. Gómez-Robledo,{" "}
            <i>Óptica Pura y Aplicada</i> 55(2), 2022, who propose it; abstract read.
          </p>
          <p>
            Hue and lightness of the kept hue:{" "}
            <Paper href="https://bottosson.github.io/posts/oklab/">
              B. Ottosson, A perceptual color space for image processing, 2020
            </Paper>
            .
          </p>
        </>
      }
    >
      <p>
        Every colour over 0.4 percent of the flag is replaced by every colour of the gallery’s palette, by the
        other colours of the flag, and by its <em>kept hue</em>: the least change of lightness, hue kept, that
        has a contrast of {limits.keptHue} with each neighbour it is not clear of today and lets no grade
        fall, as long as its name stays in the family: a red that would have to be pink is no red. What is
        within ΔE*ab {limits.departure} of today’s colour is no change, for official flags of one nation
        differ by as much. Each option is measured on the edges the flag already has, with colours that merge
        counted as contrast 0.
      </p>
      <p>
        Options are ordered by clarity in whole percent, then by strength in whole percent; then what stays in
        the same family of colour comes first, then the smaller departure by ΔE00, then the order of the
        palette. They are shown by the colour that is changed: for each its best option and those that do
        equally well. An option by which a charge loses a third of its outline or more to a merge has no place
        and is named apart; smaller merges are told.
      </p>
      <p>
        The colours to <em>change first</em> are those whose best option comes within {limits.firstWithin}{" "}
        points of clarity of the best of all, {limits.mostFirst} at most. There are none where no option
        brings {limits.leastGain} points: from a clarity of {limits.wholeClear} on the flag is clear as it is,
        and below that no single change brings {limits.leastGain} points. Where a study’s own change stands is
        said in numbers; looks are its author’s.
      </p>
      <p>
        Beside its numbers an option tells whether the new colour is within ΔE00 10 of another colour of the
        flag, and whether two neighbours would become one to a colour-blind eye. Of a drawing with very many
        colours the 24 largest are tried, with at most 64 colours of the palette, and the page says what was
        left out.
      </p>
    </Step>
  );
}
