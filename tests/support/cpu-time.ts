/** Processor time of this process: on a busy machine the clock says little. */

/** Milliseconds so far. */
export function cpuMilliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
