// Test support. A gallery so small that it is built hundreds of times: two studies of two-coloured flags, and their variants.
import { mkdir, rm, writeFile } from "node:fs/promises";
import path from "node:path";

/** Path → text, from the top of the content folder. A path that is undefined is not there. */
export type Content = Readonly<Record<string, string>>;

interface Flag {
  readonly field: string;
  readonly charge: string;
  readonly size?: number;
}

/** A disc on a field. */
export function drawFlag({ field, charge, size = 2 }: Flag): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 15 10"><path fill="${field}" d="M0 0h15v10H0z"/><circle cx="7" cy="5" r="${size}" fill="${charge}"/></svg>\n`;
}

export interface StudyText {
  readonly title: string;
  readonly replace: string;
  readonly change: string;
  readonly status?: string;
  readonly prose?: string;
}

export function writeStudy({ title, replace, change, status = "open", prose = "" }: StudyText): string {
  return `---
title: ${title}
original: original.svg
change: { replace: "${replace}", with: "${change}" }
status: ${status}
authors: [Wenna Ostrow]
date: 2026-03-14
tags: [disc]
credit: { title: ${title}, author: Wenna Ostrow, licence: CC0-1.0 }
---
${prose}
`;
}

export function writeSettings(title: string, distance = 40): string {
  return `title: ${title}\naddress: https://flags.example/discs/\nviewingDistance: ${distance}\n`;
}

/** The gallery; `title` tells its variants apart, on every page. */
export function makeContent(title = "Discs of the lagoon"): Content {
  return {
    "gallery.yaml": writeSettings(title),
    "studies/low-tide/study.md": writeStudy({ title: "Low tide", replace: "#3a2a20", change: "#f4c430" }),
    "studies/low-tide/original.svg": drawFlag({ field: "#15244a", charge: "#3a2a20" }),
    "studies/noon-gun/study.md": writeStudy({ title: "The noon gun", replace: "#f4e7a0", change: "#7a1020" }),
    "studies/noon-gun/original.svg": drawFlag({ field: "#ffffff", charge: "#f4e7a0" }),
    "flags/buoy.svg": drawFlag({ field: "#ffffff", charge: "#c01818", size: 3 }),
  };
}

/** The same with a third study, so that pages come and go between the two. */
export function makeLargerContent(): Content {
  return {
    ...makeContent("Discs of the lagoon, and one more"),
    "studies/slack-water/study.md": writeStudy({
      title: "Slack water",
      replace: "#1c6b3a",
      change: "#ffffff",
    }),
    "studies/slack-water/original.svg": drawFlag({ field: "#15244a", charge: "#1c6b3a", size: 1.5 }),
  };
}

/** Makes `folder` hold `content` and nothing else. */
export async function writeContent(folder: string, content: Content): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  for (const [file, text] of Object.entries(content)) {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), text);
  }
}
