// Floor 7. English: the steps of the method from a drawing to its lines. `em` is an emphasised term, `i` the title of a paper.

export const methodSight = {
  "method.edgesText":
    "We draw the flag {pixels} pixels high, lower where it is very wide, and number its colours. We trace the line wherever two of them meet. All lines between the same two colours are one <em>edge</em>; its length is told in heights of the flag: across one of 2:3 it is 1.5.",
  "method.edgesLimits":
    "The border of the flag is no edge. A shape that shows at less than half its strength (opacity 0.4) is left out; any other counts as opaque. An edge under {edge} of all edge length is listed, but is never the weakest and moves no verdict.",
  "method.edgesSource":
    "Checked against flags whose geometry a law fixes: shares agree within 0.2 points, lengths within 1%, with fine tips within 3%. Our own judgement: the size of the picture, half the strength, {edge} of all length.",
  /** `distance` and `finest` are in flag heights. */
  "method.distanceText":
    "A flag is made to be seen from afar. This gallery measures from {distance, plural, one {# flag height} other {# flag heights}} away; from there the finest part that an eye makes out, one arcminute, is {finest} of a flag height. Thinner parts are given to their neighbours before edges are traced, so a thin outline goes and a broad one stays. A part within 10% of the limit raises a warning.",
  "method.distanceNone":
    "This gallery measures the full drawing. From a distance, which it may choose, parts too thin to be made out go to their neighbours.",
  "method.distanceFocus":
    "<em>What has to be seen</em> are the charges: parts that touch no border, with all that they enclose, and that fill 0.2% of the flag or more. Over 35% they are a framed field, and we look inside it; the hole of a ring is none. A piece with a tenth of that area is a <em>charge</em> of its own. Authors may name it instead, and must where a charge runs into a field of its own colour, for we do not guess. A flag without a charge is no worse for it.",
  "method.distanceSame":
    "A colour within {same} of a larger one (<a>ΔE00</a>) counts with it. Shares of colours are of the full drawing.",
  "method.distanceSource":
    "One arcminute: 20/20 sight, ISO 8596, second-hand. It is a model: a single strong line may still be noticed. Our own judgement: the distance and all percentages, ΔE00 {same}, the tenth.",
  "method.lastingText":
    "From each distance we ask two things. Is what has to be seen clear? Its own edges have a <a>clarity</a> there. Is it large enough? At least {left} of its area has to be left, and its largest piece has to span {span} arcminutes, as a letter that 20/20 sight reads.",
  "method.lastingLast":
    "It <em>lasts to</em> the last distance from which it is large enough. That is a matter of size, which no change of colour moves. The pictures are blurred as an eye has them; no number is taken from them.",
  "method.lastingTable": "What a distance makes of a flag, in percent of its height",
  /** Heads of the table: from how many flag heights, the finest part that can be seen, the blur of an eye. */
  "method.lastingFrom": "Flag heights",
  "method.lastingFinest": "Finest part",
  "method.lastingBlur": "Blur",
  "method.lastingSource":
    "{span} arcminutes: ISO 8596, second-hand. Our own judgement: the {left}, and to ask it of the largest piece. Blur, 0.5 arcminutes standard deviation: Levi and others, <i>Vision Research</i> 30, 1990, <levi>abstract</levi>; a Gaussian is no lens: Strasburger and others, <strasburger>2018</strasburger>.",
} as const;
