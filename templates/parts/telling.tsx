// Part. The steps of the method about what pages tell beside their numbers: the words, fimbriation, and the facts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
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
        The sentences under this heading are made of the numbers and the names on the page, by rule, and of
        nothing else. Edges of the focus come first. For each edge they say what it had and has, and along how
        much of the outline of the focus it runs or, where it borders no focus, of all edge length. What stays
        weak is named before what stays strong. Edges too short to decide are left to the table.
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
          measurement, paints that are not one flat colour.
        </dd>
      </dl>
    </Step>
  );
}

/** How options are found and ordered. */
export function OptionsStep(): JSX.Element {
  return (
    <Step
      id="options"
      heading="Other single changes"
      source={
        <>
          <p>The order, the groups of equals and the limits are our own judgement.</p>
          <p>
            Nearest shade that clears:{" "}
            <Paper href="https://bottosson.github.io/posts/oklab/">
              B. Ottosson, A perceptual color space for image processing, 2020
            </Paper>
            , for hue, chroma and lightness.
          </p>
        </>
      }
    >
      <p>
        Every paint over 0.4 percent of the flag is replaced by every colour of the gallery’s palette, by the
        other colours of the flag, and by the nearest shade of itself that is clear against all it meets: hue
        kept, chroma lowered only as far as a screen forces, lightness alone changed, lighter or darker,
        whichever departs least. Each such option is measured on the edges the flag already has, with colours
        that merge counted as contrast 0.
      </p>
      <p>
        Options are ordered by clarity in whole percent. Those that come out equal share a place, and equals
        that change the same colour are shown as one, with the drawing of the one nearest to today’s colour by
        ΔE00. The colour to change first is the one whose best option gains most clarity; there is none where
        nothing gains a point, and with a tie the smaller departure decides. An option that would merge the
        charge, or a part of it, with what is around it has no place and is named apart. Where a study’s own
        change stands is said in numbers; looks are its author’s.
      </p>
      <p>
        Beside its numbers an option tells which edges become clear, which are lost and which merge; whether
        the new colour is within ΔE00 10 of another colour of the flag; and whether two neighbours would
        become one to a colour-blind eye. Of a drawing with very many colours the 24 largest are tried, with
        at most 64 colours of the palette, and the page says what was left out.
      </p>
    </Step>
  );
}
