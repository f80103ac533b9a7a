// Loaded before a program that is measured: writes what it took into the file that PEAK names when it ends.
const { writeFileSync } = require('node:fs');

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeFileSync(
    process.env.PEAK,
    JSON.stringify({ megabytes: maxRSS / 1024, cpu: (userCPUTime + systemCPUTime) / 1e6 }),
  );
});
