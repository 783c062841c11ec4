// Test support, loaded before a build and its children by NODE_OPTIONS: another number of cores, folders that are listed in
// another order, another umask. What is wanted stands in the environment.
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import os from "node:os";

const { WORLD_CORES: cores, WORLD_ORDER: order, WORLD_UMASK: umask } = process.env;

if (umask) process.umask(Number.parseInt(umask, 8));

if (cores) {
  os.availableParallelism = () => Number(cores);
  os.cpus = () => Array.from({ length: Number(cores) }, () => ({}));
}

if (order) {
  let state = 1;
  const random = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const turn = (names) => {
    if (!Array.isArray(names)) return names;
    if (order === "reversed") return names.reverse();
    return names
      .map((name) => [random(), name])
      .sort(([a], [b]) => a - b)
      .map(([, name]) => name);
  };
  const { readdir, readdirSync } = fs;
  const { readdir: readdirLater } = fs.promises;
  fs.readdirSync = (...words) => turn(readdirSync(...words));
  fs.promises.readdir = async (...words) => turn(await readdirLater(...words));
  fs.readdir = (...words) => {
    const done = words.pop();
    readdir(...words, (error, names) => done(error, turn(names)));
  };
}

syncBuiltinESMExports();
