// Part. The formulas of the method page, in MathML.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { useSay } from "./words.tsx";

/** Cloth reflectance from relative luminance. */
export function ReflectanceFormula({ black, white }: { black: string; white: string }): JSX.Element {
  const say = useSay();
  return (
    <Formula>
      <msub>
        <Sign name="Y" />
        <mtext>{say("method.inCloth")}</mtext>
      </msub>
      <mo>=</mo>
      <mn>{black}</mn>
      <mo>+</mo>
      <mrow>
        <mo>(</mo>
        <mn>{white}</mn>
        <mo>−</mo>
        <mn>{black}</mn>
        <mo>)</mo>
      </mrow>
      <mo>·</mo>
      <Sign name="Y" />
    </Formula>
  );
}

/** Relative luminance of a linear-light sRGB colour. */
export function LuminanceFormula({ red, green, blue }: MethodPage["luminance"]): JSX.Element {
  return (
    <Formula>
      <Sign name="Y" />
      <mo>=</mo>
      <mn>{red}</mn>
      <mo>⁢</mo>
      <Sign name="R" />
      <mo>+</mo>
      <mn>{green}</mn>
      <mo>⁢</mo>
      <Sign name="G" />
      <mo>+</mo>
      <mn>{blue}</mn>
      <mo>⁢</mo>
      <Sign name="B" />
    </Formula>
  );
}

/** Luminance contrast of two reflectances. */
export function ContrastFormula(): JSX.Element {
  const say = useSay();
  return (
    <Formula>
      <mtext>{say("method.ofContrast")}</mtext>
      <mo>=</mo>
      <mn>125</mn>
      <mo>·</mo>
      <mfrac>
        <mrow>
          <High />
          <mo>−</mo>
          <Low />
        </mrow>
        <mrow>
          <High />
          <mo>+</mo>
          <Low />
          <mo>+</mo>
          <mn>25</mn>
        </mrow>
      </mfrac>
    </Formula>
  );
}

/** How much an edge counts for clarity: in full from contrast 45. Two short lines fit a phone, one long line does not. */
export function CountFormula(): JSX.Element {
  const say = useSay();
  return (
    <Formula>
      <mtext>{say("method.ofCount")}</mtext>
      <mo>=</mo>
      <mi>min</mi>
      <mrow>
        <mo>(</mo>
        <mn>1</mn>
        <mo>,</mo>
        <mtext>{say("method.ofContrast")}</mtext>
        <mo>/</mo>
        <mn>45</mn>
        <mo>)</mo>
      </mrow>
    </Formula>
  );
}

/** Clarity of all edges. */
export function ClarityFormula(): JSX.Element {
  const say = useSay();
  return (
    <Formula>
      <mtext>{say("method.ofClarity")}</mtext>
      <mo>=</mo>
      <mn>100</mn>
      <mo>·</mo>
      <mfrac>
        <mrow>
          <mo>∑</mo>
          <mtext>{say("method.ofWeight")}</mtext>
          <mo>·</mo>
          <mtext>{say("method.ofCount")}</mtext>
        </mrow>
        <mrow>
          <mo>∑</mo>
          <mtext>{say("method.ofWeight")}</mtext>
        </mrow>
      </mfrac>
    </Formula>
  );
}

function Formula({ children }: { children: ComponentChildren }): JSX.Element {
  return (
    <div class="formula">
      <math>
        <mrow>{children}</mrow>
      </math>
    </div>
  );
}

/** Upright: the slanted letters of mathematics are in few fonts. */
function Sign({ name }: { name: string }): JSX.Element {
  return <mi mathvariant="normal">{name}</mi>;
}

function High(): JSX.Element {
  const say = useSay();
  return (
    <msub>
      <Sign name="Y" />
      <mtext>{say("method.inHigh")}</mtext>
    </msub>
  );
}

function Low(): JSX.Element {
  const say = useSay();
  return (
    <msub>
      <Sign name="Y" />
      <mtext>{say("method.inLow")}</mtext>
    </msub>
  );
}
