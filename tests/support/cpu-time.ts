/** How long something kept this process busy: on a machine with other work the clock says little. */

/** Milliseconds of the processor that this process has taken so far. */
export function cpuMilliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
