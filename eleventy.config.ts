// The demo as a site of Eleventy's own command, npm run eleventy: the gallery as any other site takes it in, and nothing else.
import type { UserConfig } from "@11ty/eleventy";
import counterchange from "./src/publish/eleventyplugin.ts";

export default function configure(config: UserConfig): void {
  config.setTemplateFormats(["11ty.js"]);
  config.addPlugin(counterchange, { content: "content", at: "/" });
}

export const config = { dir: { input: "content", output: "_site" } };
