// Loaded before a program that is measured: writes what it took into the file that PEAK names when it ends.
const { readFileSync, writeFileSync } = require('node:fs');

/** Kilobytes. What getrusage says begins at the size of whoever started the program; Linux knows better. */
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
