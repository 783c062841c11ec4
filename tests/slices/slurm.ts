// A cluster of one node on this machine, of the daemons of Slurm and of munge as Debian has them, started by hand: no systemd
// and no control groups are needed. A job array runs on it, of which one task is killed half-way and requeued.
import { spawn, spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { availableParallelism, hostname, userInfo } from "node:os";
import { join } from "node:path";
import { runLines } from "./engine.ts";
import { measureKept } from "./site.ts";

/** The task that is killed. */
const victim = 2;

/** What has to be kept of it by then, in entries: it is half-way. */
const half = 20;

const wait = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Source: slurm.conf(5). Processes are tracked by their group. */
const configure = (folder: string, host: string, user: string): string => `ClusterName=slices
SlurmctldHost=${host}(127.0.0.1)
SlurmctldPort=16817
SlurmdPort=16818
AuthType=auth/munge
AuthInfo=socket=${folder}/munge.socket
SlurmUser=${user}
SlurmdUser=${user}
StateSaveLocation=${folder}/state
SlurmdSpoolDir=${folder}/spool
SlurmctldPidFile=${folder}/slurmctld.pid
SlurmdPidFile=${folder}/slurmd.pid
ProctrackType=proctrack/pgid
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
MpiDefault=none
ReturnToService=2
MinJobAge=86400
NodeName=${host} NodeAddr=127.0.0.1 CPUs=${availableParallelism()} State=UNKNOWN
PartitionName=main Nodes=ALL Default=YES MaxTime=INFINITE State=UP
`;

/** Starts the cluster, lets `use` work on it, and ends its daemons. */
async function withCluster<T>(
  folder: string,
  use: (environment: Record<string, string>) => Promise<T>,
): Promise<T> {
  const user = userInfo().username;
  await mkdir(join(folder, "state"), { recursive: true });
  await mkdir(join(folder, "spool"));
  await writeFile(join(folder, "slurm.conf"), configure(folder, hostname(), user));
  await writeFile(join(folder, "munge.key"), randomBytes(1024), { mode: 0o600 });
  const at = (name: string) => join(folder, `munge.${name}`);
  const environment = { SLURM_CONF: join(folder, "slurm.conf") };
  const started = [
    [
      "munged",
      "-F",
      "-f",
      `--key-file=${at("key")}`,
      `--socket=${at("socket")}`,
      `--pid-file=${at("pid")}`,
      `--log-file=${at("log")}`,
      `--seed-file=${at("seed")}`,
    ],
    ["slurmctld", "-D", "-c"],
    ["slurmd", "-D"],
  ];
  const daemons = [];
  try {
    for (const [program = "", ...words] of started) {
      const daemon = spawn(program, words, { env: { ...process.env, ...environment }, stdio: "ignore" });
      daemons.push(daemon);
      await wait(1500);
      if (daemon.exitCode !== null) throw new Error(`${program} ended with ${daemon.exitCode}`);
    }
    return await use(environment);
  } finally {
    // Where all went well there is no job left.
    spawnSync("scancel", [`--user=${user}`], { env: { ...process.env, ...environment } });
    for (const daemon of daemons.reverse()) {
      const gone = new Promise((resolve) => daemon.once("exit", resolve));
      if (daemon.exitCode === null && daemon.kill()) await Promise.race([gone, wait(10_000)]);
    }
  }
}

/** Runs the job script `text` in `room` to its end, one task killed on the way. Throws where a task fails, or none is killed. */
export async function runArray(
  room: string,
  folder: string,
  text: string,
  say: (line: string) => void,
): Promise<void> {
  await writeFile(join(room, "gallery.sh"), text);
  await withCluster(folder, async (environment) => {
    const run = (line: string) => runLines(room, line, environment);
    const job = await run("sbatch --parsable --open-mode=append --output=out-%a.txt gallery.sh");
    const task = `${job}_${victim}`;
    const read = () => measureKept(join(room, `kept/${victim}`)).catch(() => ({ entries: 0 }));
    while ((await read()).entries < half) {
      if ((await run("squeue -h")) === "")
        throw new Error(`task ${victim} was over before it could be killed`);
      await wait(100);
    }
    await run(`scontrol requeue ${task}`);
    say(`            task ${victim} killed and requeued, ${(await read()).entries} entries kept by then`);
    // A requeued task waits two minutes, unless somebody says otherwise once it has been put in line.
    while (!(await run(`squeue -h -j ${task} -o "%t %r"`)).includes("PD BeginTime")) await wait(300);
    await run(`scontrol update JobId=${task} StartTime=now`);
    while ((await run("squeue -h")) !== "") await wait(300);
    const tasks = (await run(`scontrol show job ${job}`)).split("\n\n");
    for (const line of tasks) {
      const of = (key: string): string => new RegExp(`${key}=(\\S+)`).exec(line)?.[1] ?? "";
      const index = of("ArrayTaskId");
      const said = (await readFile(join(room, `out-${index}.txt`), "utf8")).trimEnd().split("\n").at(-1);
      say(
        `            task ${index}: ${of("JobState")}, exit ${of("ExitCode")}, restarts ${of("Restarts")}: ${said}`,
      );
      const isRight =
        of("JobState") === "COMPLETED" && of("Restarts") === (Number(index) === victim ? "1" : "0");
      if (!isRight) throw new Error(line);
    }
  });
}
