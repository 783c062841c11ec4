// Test support. A gallery to be divided: three good studies, one of which shows a drawing of flags/, a broken one and a draft
// between them; flags beside them, and a folder to compare with.
import { type Content, drawFlag, writeSettings, writeStudy } from "../faults/gallery.ts";

const texts: readonly string[] = [
  writeStudy({ title: "Low tide", replace: "#3a2a20", change: "#f4c430" }),
  writeStudy({ title: "The noon gun", replace: "#f4e7a0", change: "#7a1020" }),
  writeStudy({ title: "Broken", replace: "#123457", change: "#f4c430" }),
  writeStudy({ title: "A draft", replace: "#7a1020", change: "#ffffff", status: "draft" }),
  writeStudy({ title: "Shared", replace: "#105040", change: "#ffffff" }).replace(
    "original.svg",
    "/flags/shared.svg",
  ),
];

const flags = {
  "studies/study-0/original.svg": { field: "#15244a", charge: "#3a2a20" },
  "studies/study-1/original.svg": { field: "#ffffff", charge: "#f4e7a0" },
  "studies/study-2/original.svg": { field: "#7a1020", charge: "#15244a" },
  "studies/study-3/original.svg": { field: "#1d5b3a", charge: "#7a1020" },
  "flags/buoy.svg": { field: "#ffffff", charge: "#c01818", size: 3 },
  "flags/shared.svg": { field: "#2a2a6a", charge: "#105040" },
  "flags/spar.svg": { field: "#c01818", charge: "#ffffff", size: 1 },
  "elsewhere/far.svg": { field: "#105040", charge: "#f4c430", size: 4 },
  "elsewhere/near.svg": { field: "#15244a", charge: "#f4c430" },
};

/** The gallery, in a folder `content`. */
export function makeDivided(): Content {
  const files: readonly (readonly [string, string])[] = [
    ["gallery.yaml", `${writeSettings("Divided")}compareWith: elsewhere\n`],
    ...texts.map((text, index) => [`studies/study-${index}/study.md`, text] as const),
    ...Object.entries(flags).map(([path, flag]) => [path, drawFlag(flag)] as const),
  ];
  return Object.fromEntries(files.map(([path, text]) => [`content/${path}`, text]));
}
