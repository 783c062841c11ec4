// Test support. What work takes, on whatever machine and beside whatever else it does.

/** Starts a clock that returns the milliseconds for which this process has kept processors busy since: not those that others did. */
export function startClock(): () => number {
  const before = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
}
