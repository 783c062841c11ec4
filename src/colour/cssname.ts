// Floor 1. The names that CSS has for colours, so that a message can propose one.
import culori from "culori/require";

const { colorsNamed } = culori;

/** Every named colour of CSS, in small letters. Source: CSS Color Module Level 4, section 6.1. */
export const cssNames: readonly string[] = Object.keys(colorsNamed);
