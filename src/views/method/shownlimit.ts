// Floor 8. The limits that decide, as the method page prints them: each from the code that uses it.
import { clearFrom, strongFrom } from "../../colour/contrast.ts";
import { leastLeft, leastSpanArcminutes } from "../../measure/focusclarity.ts";
import { colourLimits, edgeLimits, flagLimits } from "../../measure/limit.ts";
import type { Format } from "../../words/format.ts";

/** Numbers as text. Contrast, clarity and shares in percent, moves in points. */
export interface Limits {
  readonly clear: string;
  readonly strong: string;
  /** Share of all edge length from which an edge decides. */
  readonly edge: string;
  /** ΔE00 under which two colours are one. */
  readonly same: string;
  readonly contrastStep: string;
  readonly leastMove: string;
  readonly largeMove: string;
  /** Share of the focus's area that has to be left, and the arcminutes that its largest piece has to span. */
  readonly left: string;
  readonly span: string;
  /** ΔE*ab under which a colour is no change. */
  readonly departure: string;
  /** Contrast that a kept hue is given. */
  readonly keptHue: string;
  readonly leastGain: string;
  readonly firstWithin: string;
  readonly mostFirst: string;
  readonly wholeClear: string;
  /** Steps as numbers, for words that go by them. */
  readonly points: Readonly<Record<"contrastStep" | "leastMove" | "largeMove", number>>;
}

/** The limits in the language of the gallery. */
export function presentLimits(format: Format): Limits {
  const say = (value: number) => format.number(value, 0);
  return {
    clear: format.percent(clearFrom),
    strong: format.percent(strongFrom),
    edge: format.share(edgeLimits.deciding),
    same: say(colourLimits.same),
    contrastStep: say(edgeLimits.step),
    leastMove: say(flagLimits.move),
    largeMove: say(flagLimits.largeMove),
    left: format.share(leastLeft),
    span: say(leastSpanArcminutes),
    departure: say(colourLimits.noChange),
    keptHue: format.percent(clearFrom + edgeLimits.inHand),
    leastGain: say(flagLimits.gain),
    firstWithin: say(flagLimits.firstWithin),
    mostFirst: say(flagLimits.mostFirst),
    wholeClear: format.percent(flagLimits.clear),
    points: {
      contrastStep: edgeLimits.step,
      leastMove: flagLimits.move,
      largeMove: flagLimits.largeMove,
    },
  };
}
