// Part. The steps of the method that decide a grade: the light a cloth gives back, contrast, and what stands beside it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { Track } from "../figures/track.tsx";
import { ClothFigure } from "../figures/worked.tsx";
import { ContrastFormula, LuminanceFormula, ReflectanceFormula } from "./formula.tsx";
import { Paragraph, paper, Step, stepLink } from "./step.tsx";
import { SwatchPair } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** From a colour on a screen to the light that cloth gives back. */
export function LightStep({ method }: { method: MethodPage }): JSX.Element {
  const { cloth, laws, luminance, ranges, worked } = method;
  return (
    <Step
      id="reflectance"
      figure={
        <>
          {worked && <ClothFigure worked={worked} limits={cloth.marks} />}
          <NearTable method={method} />
        </>
      }
      source={
        <Paragraph
          id="method.reflectanceSource"
          tags={{ wcag: paper("https://www.w3.org/TR/WCAG22/#dfn-relative-luminance") }}
        />
      }
    >
      <Paragraph id="method.reflectanceText" />
      <LuminanceFormula {...luminance} />
      <Paragraph id="method.reflectanceCloth" />
      <ReflectanceFormula black={cloth.black} white={cloth.white} />
      <Paragraph id="method.reflectanceRanges" values={{ ...ranges, laws }} at="near-the-line" />
    </Step>
  );
}

/** The pair whose grade is another on the widest range of cloth. */
function NearTable({ method: { near, ranges, gradeMarks } }: { method: MethodPage }): JSX.Element {
  const say = useSay();
  return (
    <table class="tracks" aria-labelledby="near-figure">
      <caption id="near-figure">{say("method.near", ranges)}</caption>
      <tbody>
        <tr>
          <th scope="row">
            <SwatchPair hexes={near.hexes} /> {near.names[0]} / {near.names[1]}
          </th>
          <td class="number">
            <bdi>
              {near.contrast} {near.grade}
              {say("list.comma")}
              {near.widest.contrast} {near.widest.grade}
            </bdi>
          </td>
          <td class="track-cell">
            <Track ring={near.x} dot={near.widest.x} marks={gradeMarks} />
          </td>
        </tr>
      </tbody>
    </table>
  );
}

/** The contrast that decides, its grades, and how usual pairs come out. */
export function ContrastStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="contrast"
      figure={<PairTable method={method} />}
      source={
        <Paragraph id="method.contrastSource" tags={{ boon: paper("https://doi.org/10.3233/WOR-205158") }} />
      }
    >
      <Paragraph id="method.contrastText" />
      <ContrastFormula />
      <GradeTable />
      <Paragraph id="method.contrastClose" values={method.published} />
    </Step>
  );
}

function PairTable({ method: { pairs, gradeMarks } }: { method: MethodPage }): JSX.Element {
  const say = useSay();
  return (
    <table class="tracks pairs">
      <caption>{say("method.pairs")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("method.pair")}</th>
          <th scope="col">{say("method.pairContrast")}</th>
          <th scope="col">
            <span class="unseen">{say("method.pairScale")}</span>
          </th>
          <th scope="col" class="end">
            {say("method.pairRatio")}
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
  );
}

const rows = [
  { grade: "grade.weak", range: "method.contrastWeak", use: "method.needsWeak" },
  { grade: "grade.soft", range: "method.contrastSoft", use: "method.needsSoft" },
  { grade: "grade.clear", range: "method.contrastClear", use: "method.needsClear" },
  { grade: "grade.strong", range: "method.contrastStrong", use: "method.needsStrong" },
] as const;

/** Each grade, with the contrast that it begins at and what it is asked for. */
function GradeTable(): JSX.Element {
  const say = useSay();
  return (
    <table class="narrow">
      <caption>{say("method.contrastTable")}</caption>
      <tbody>
        {rows.map(({ grade, range, use }) => (
          <tr key={grade}>
            <th scope="row">{say(grade)}</th>
            <td class="number">
              <bdi>{say(range)}</bdi>
            </td>
            <td>{say(use)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The measures that are shown and do not decide. */
export function BesideStep({ method: { walk, beside } }: { method: MethodPage }): JSX.Element {
  const [first, second] = walk.names;
  return (
    <Step
      id="beside"
      figure={
        <p class="tracks-line">
          <SwatchPair hexes={walk.hexes} />{" "}
          <Message
            id="method.besidePair"
            values={{ ...walk, first, second }}
            tags={{ number: (text) => <span class="number">{text}</span> }}
          />
        </p>
      }
      source={
        <Paragraph
          id="method.besideSource"
          tags={{
            ratio: paper("https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio"),
            objects: paper("https://www.w3.org/WAI/WCAG22/Understanding/non-text-contrast.html"),
            sharma: paper("https://doi.org/10.1002/col.20070"),
          }}
        />
      }
    >
      <Paragraph id="method.besideText" values={{ first, second }} tags={{ a: stepLink("facts") }} />
      {beside.map(({ about, source }) => (
        <p key={about}>
          {about} {source}.
        </p>
      ))}
    </Step>
  );
}
