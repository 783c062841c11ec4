// Floor 9. What every picture of a redesign says of itself in its metadata, which hold English letters only.
// Source: TIFF 6.0, tag 270, ImageDescription, ASCII.
import { english } from "../../words/en/all.ts";

export const unofficial: string = english["still.unofficial"];
