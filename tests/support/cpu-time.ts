/** Processor time: on a busy machine the clock says little. */

/** Of this process so far. */
export function cpuMilliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
