// Loaded before a measured program; at its end writes peak memory to the file PEAK.
const { readFileSync, writeFileSync } = require('node:fs');

/** Kilobytes. getrusage starts from the parent's size; Linux knows better. */
function peak(maxRSS) {
  try {
    return Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))?.[1] ?? maxRSS);
  } catch {
    return maxRSS;
  }
}

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  const cpu = (userCPUTime + systemCPUTime) / 1e6;
  writeFileSync(process.env.PEAK, JSON.stringify({ megabytes: peak(maxRSS) / 1024, cpu }));
});
